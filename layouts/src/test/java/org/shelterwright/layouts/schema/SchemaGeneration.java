package org.shelterwright.layouts.schema;

import com.fasterxml.classmate.ResolvedType;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.CustomPropertyDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.rules.Figure;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Generates the JSON Schema of a file format from its record. It states the rules of the files a second time, on purpose
 * apart from the reader: the tests hold the two against each other.
 */
final class SchemaGeneration {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final DefaultPrettyPrinter PRINTER = new DefaultPrettyPrinter()
            .withArrayIndenter(DefaultPrettyPrinter.FixedSpaceIndenter.instance())
            .withObjectIndenter(new DefaultIndenter("  ", "\n"));

    private SchemaGeneration() {}

    static String of(JsonFormat<?> format) {
        ObjectNode schema = generator().generateSchema(format.type());
        ObjectNode root = MAPPER.createObjectNode();
        root.set("$schema", schema.get("$schema"));
        root.put("title", format.name());
        if (schema.has("$defs")) {
            root.set("$defs", schema.get("$defs"));
        }
        root.put("type", "object");
        ObjectNode properties = root.putObject("properties");
        properties.putObject("format").put("const", format.name());
        properties.putObject("version").put("const", format.version());
        properties.setAll((ObjectNode) schema.get("properties"));
        ArrayNode required = root.putArray("required").add("format").add("version");
        if (schema.has("required")) {
            required.addAll((ArrayNode) schema.get("required"));
        }
        root.put("additionalProperties", false);
        return MAPPER.writer().with(PRINTER).writeValueAsString(root) + "\n";
    }

    private static SchemaGenerator generator() {
        SchemaGeneratorConfigBuilder config = new SchemaGeneratorConfigBuilder(
                        SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
                .with(
                        Option.DEFINITIONS_FOR_ALL_OBJECTS,
                        Option.PLAIN_DEFINITION_KEYS,
                        Option.MAP_VALUES_AS_ADDITIONAL_PROPERTIES,
                        Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT);
        config.forTypesInGeneral()
                .withPropertySorter((one, other) -> 0)
                .withCustomDefinitionProvider((type, context) -> ofType(type));
        config.forFields()
                .withRequiredCheck(SchemaGeneration::required)
                .withCustomDefinitionProvider((field, context) -> ofField(field));
        return new SchemaGenerator(config.build());
    }

    private static @Nullable CustomPropertyDefinition ofField(FieldScope field) {
        if (field.getRawMember().isAnnotationPresent(Millimetres.class)) {
            return new CustomPropertyDefinition(length());
        }
        if (field.getName().equals("id") && field.getType().getErasedType() == String.class) {
            return new CustomPropertyDefinition(MAPPER.createObjectNode()
                    .put("type", "string")
                    .put("pattern", "^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$"));
        }
        return null;
    }

    private static @Nullable CustomDefinition ofType(ResolvedType type) {
        Class<?> erased = type.getErasedType();
        if (erased == Point.class || erased == Size.class) {
            return new CustomDefinition(lengths(3));
        }
        if (erased == Box.class) {
            return new CustomDefinition(corners(3));
        }
        if (erased == Rect.class) {
            return new CustomDefinition(corners(2));
        }
        if (erased == QuarterTurn.class) {
            ObjectNode turn = MAPPER.createObjectNode();
            turn.putArray("enum").add(0).add(90).add(180).add(270);
            return new CustomDefinition(turn);
        }
        if (erased.isEnum()) {
            ObjectNode constants = MAPPER.createObjectNode().put("type", "string");
            ArrayNode names = constants.putArray("enum");
            for (Object constant : erased.getEnumConstants()) {
                names.add(
                        constant instanceof Figure figure
                                ? figure.id()
                                : ((Enum<?>) constant)
                                        .name()
                                        .toLowerCase(Locale.ROOT)
                                        .replace('_', '-'));
            }
            return new CustomDefinition(constants);
        }
        return null;
    }

    private static ObjectNode length() {
        ObjectNode length = MAPPER.createObjectNode();
        length.putArray("type").add("number").add("string");
        return length.put("description", "millimetres, or a text with mm, cm, m, in or ft");
    }

    private static ObjectNode lengths(int count) {
        ObjectNode list = MAPPER.createObjectNode().put("type", "array");
        list.set("items", length());
        return list.put("minItems", count).put("maxItems", count);
    }

    private static ObjectNode corners(int count) {
        ObjectNode corners = MAPPER.createObjectNode().put("type", "object");
        ObjectNode properties = corners.putObject("properties");
        properties.set("from", lengths(count));
        properties.set("to", lengths(count));
        corners.putArray("required").add("from").add("to");
        return corners.put("additionalProperties", false);
    }

    private static boolean required(FieldScope field) {
        return Arrays.stream(field.getDeclaringType().getErasedType().getRecordComponents())
                .filter(component -> component.getName().equals(field.getName()))
                .noneMatch(SchemaGeneration::mayBeLeftOut);
    }

    private static boolean mayBeLeftOut(RecordComponent component) {
        Class<?> type = component.getType();
        return component.getAnnotatedType().isAnnotationPresent(Nullable.class)
                || Collection.class.isAssignableFrom(type)
                || Map.class.isAssignableFrom(type)
                || type == boolean.class
                || type.isRecord() && canBeEmpty(type);
    }

    /** Whether all components may be left out, and the record takes that. */
    private static boolean canBeEmpty(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        if (!Arrays.stream(components).allMatch(SchemaGeneration::mayBeLeftOut)) {
            return false;
        }
        try {
            type.getDeclaredConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new))
                    .newInstance(Arrays.stream(components)
                            .map(SchemaGeneration::empty)
                            .toArray());
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    private static @Nullable Object empty(RecordComponent component) {
        if (component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
            return null;
        }
        return component.getType() == boolean.class
                ? Boolean.FALSE
                : component.getType() == List.class
                        ? List.of()
                        : component.getType() == Map.class ? Map.of() : Set.of();
    }
}
