package org.shelterwright.app.gltf;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes a layout as a binary glTF 2.0 model: a node for the body and one for each unit, named, with its faces in its
 * tint and its edges as lines. Lengths in metres, y up, forward along +z.
 *
 * <p>Source: Khronos glTF 2.0 specification, 3.6 (geometry), 4 (GLB). Equal scenes give equal bytes.
 */
public final class Glb {

    private static final int MAGIC = 0x46546C67;
    private static final int JSON = 0x4E4F534A;
    private static final int BINARY = 0x004E4942;
    private static final int FLOAT = 5126;
    private static final int UNSIGNED_INT = 5125;
    private static final int ARRAY = 34962;
    private static final int ELEMENTS = 34963;
    private static final int LINES = 1;
    private static final int TRIANGLES = 4;

    private final JsonMapper json = JsonMapper.builder().build();
    private final Meshes meshes = new Meshes();
    private final ObjectNode root = json.createObjectNode();
    private final ArrayNode nodes = root.putArray("nodes");
    private final ArrayNode meshNodes = root.putArray("meshes");
    private final Map<String, Integer> materials = new LinkedHashMap<>();
    private final ArrayNode materialNodes = root.putArray("materials");
    private final ArrayNode children = json.createArrayNode();

    private Glb() {}

    /** The file of a scene in a situation. Cost: linear in the solids. */
    public static byte[] write(Scene scene, Situation situation, String generator) {
        return new Glb().model(scene, situation, generator);
    }

    private byte[] model(Scene scene, Situation situation, String generator) {
        node("body", scene.body().name(), shell(scene.body()), "floor", Role.FLOOR.colour());
        for (PlacedUnit unit : scene.units()) {
            Tint tint = Tint.of(unit.item());
            node(unit.id(), unit.name(), unit.solids(situation), tint.name().toLowerCase(Locale.ROOT), tint.side());
        }
        cables(scene);
        ObjectNode asset = root.putObject("asset");
        asset.put("version", "2.0");
        asset.put("generator", generator);
        ObjectNode top = nodes.addObject();
        top.put("name", scene.brief().name());
        top.set("children", children);
        root.put("scene", 0);
        ObjectNode only = root.putArray("scenes").addObject();
        only.put("name", scene.brief().name());
        only.putArray("nodes").add(nodes.size() - 1);
        buffers();
        return file(json.writeValueAsBytes(root), meshes.bytes());
    }

    /** A node for each routed wire, its runs as bars as thick as the cable. */
    private void cables(Scene scene) {
        for (LaidWire wire : CableNet.of(scene).wires()) {
            Cable cable = wire.cable();
            if (cable != null && wire.routed() && wire.shape() != null) {
                String look = cable.cableClass().name().toLowerCase(Locale.ROOT).replace('_', '-');
                List<Box> bars = CableBars.of(wire.shape().path(), cable.diameter());
                node(
                        "wire-" + wire.wire().id(),
                        "Wire " + wire.wire().id(),
                        bars,
                        "cable-" + look,
                        CableBars.colour(cable.cableClass()));
            }
        }
    }

    /** The floor and what stands into the body; walls and roof would hide the rest. */
    private static List<Box> shell(Body body) {
        Box outside = body.outside();
        List<Box> shell = new ArrayList<>();
        if (outside.z0() < 0) {
            shell.add(new Box(outside.x0(), outside.y0(), outside.z0(), outside.x1(), outside.y1(), 0));
        }
        body.intrusions().stream().map(Intrusion::box).forEach(shell::add);
        return shell;
    }

    private void node(String id, String name, List<Box> boxes, String materialName, Colour colour) {
        if (boxes.isEmpty()) {
            return;
        }
        int[] faces = meshes.faces(boxes);
        int[] edges = meshes.edges(boxes);
        ObjectNode mesh = meshNodes.addObject();
        mesh.put("name", id);
        ArrayNode primitives = mesh.putArray("primitives");
        ObjectNode solid = primitives.addObject();
        solid.put("mode", TRIANGLES);
        ObjectNode attributes = solid.putObject("attributes");
        attributes.put("POSITION", faces[0]);
        attributes.put("NORMAL", faces[1]);
        solid.put("indices", faces[2]);
        solid.put("material", material(materialName, colour));
        ObjectNode lines = primitives.addObject();
        lines.put("mode", LINES);
        lines.putObject("attributes").put("POSITION", edges[0]);
        lines.put("indices", edges[1]);
        lines.put("material", material("edge", Role.EDGE.colour()));
        children.add(nodes.size());
        ObjectNode node = nodes.addObject();
        node.put("name", name);
        node.put("mesh", meshNodes.size() - 1);
        node.putObject("extras").put("id", id);
    }

    private int material(String name, Colour colour) {
        return materials.computeIfAbsent(name, key -> {
            ObjectNode material = materialNodes.addObject();
            material.put("name", key);
            ObjectNode look = material.putObject("pbrMetallicRoughness");
            ArrayNode factor = look.putArray("baseColorFactor");
            for (int shift = 16; shift >= 0; shift -= 8) {
                factor.add(linear((colour.rgb() >> shift & 0xFF) / 255.0));
            }
            factor.add(1.0);
            look.put("metallicFactor", 0.0);
            look.put("roughnessFactor", 0.9);
            return materialNodes.size() - 1;
        });
    }

    /** A channel of sRGB in linear light, rounded to four decimals. */
    private static double linear(double channel) {
        double linear = channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
        return Math.round(linear * 1e4) / 1e4;
    }

    private void buffers() {
        root.putArray("buffers").addObject().put("byteLength", meshes.bytes().length);
        ArrayNode views = root.putArray("bufferViews");
        ArrayNode accessors = root.putArray("accessors");
        for (Meshes.Accessor accessor : meshes.accessors()) {
            ObjectNode view = views.addObject();
            view.put("buffer", 0);
            view.put("byteOffset", accessor.offset());
            view.put("byteLength", accessor.length());
            view.put("target", accessor.indices() ? ELEMENTS : ARRAY);
            ObjectNode node = accessors.addObject();
            node.put("bufferView", views.size() - 1);
            node.put("componentType", accessor.indices() ? UNSIGNED_INT : FLOAT);
            node.put("count", accessor.count());
            node.put("type", accessor.indices() ? "SCALAR" : "VEC3");
            if (!accessor.indices()) {
                accessor.least().forEach(node.putArray("min")::add);
                accessor.most().forEach(node.putArray("max")::add);
            }
        }
    }

    private static byte[] file(byte[] text, byte[] binary) {
        int textLength = (text.length + 3) / 4 * 4;
        int binaryLength = (binary.length + 3) / 4 * 4;
        int length = 12 + 8 + textLength + 8 + binaryLength;
        ByteBuffer file = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        file.putInt(MAGIC).putInt(2).putInt(length);
        file.putInt(textLength).putInt(JSON).put(text);
        for (int i = text.length; i < textLength; i++) {
            file.put((byte) ' ');
        }
        file.putInt(binaryLength).putInt(BINARY).put(binary);
        return file.array();
    }
}
