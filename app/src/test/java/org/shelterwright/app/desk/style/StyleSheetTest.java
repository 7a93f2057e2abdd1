package org.shelterwright.app.desk.style;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shelterwright.app.look.Contrast;
import org.shelterwright.app.look.Ground;
import org.shelterwright.app.look.Role;

class StyleSheetTest {
    private static final Map<String, Role> ROLES =
            Arrays.stream(Role.values()).collect(Collectors.toMap(StyleSheet::property, Function.identity()));
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^}]*)}");
    private static final Pattern TEXT = Pattern.compile("-fx-text-fill:\\s*(-[a-z-]+)");
    private static final Pattern GROUND = Pattern.compile("-fx-background-color:\\s*(-[a-z-]+)");
    private static final Pattern VALUE = Pattern.compile("(?:color|fill|stroke|accent):\\s*([^;]+);");

    @ParameterizedTest
    @EnumSource(Ground.class)
    void textOfEveryRuleIsReadableOnItsGround(Ground ground) {
        List<String> held = new ArrayList<>();
        RULE.matcher(StyleSheet.rules(100)).results().forEach(rule -> {
            Matcher text = TEXT.matcher(rule.group(2));
            Matcher on = GROUND.matcher(rule.group(2));
            if (text.find() && on.find()) {
                double contrast = Contrast.of(
                        ROLES.get(text.group(1)).colour(ground),
                        ROLES.get(on.group(1)).colour(ground));
                assertThat(contrast).as(rule.group(1).strip()).isGreaterThanOrEqualTo(4.5);
                held.add(rule.group(1));
            }
        });
        assertThat(held).hasSizeGreaterThan(8);
    }

    @Test
    void rulesNameNoColourButRoles() {
        assertThat(StyleSheet.rules(100)).doesNotContain("#").doesNotContain("rgb");
        Set<String> unknown = new TreeSet<>();
        VALUE.matcher(StyleSheet.rules(100))
                .results()
                .flatMap(found -> Arrays.stream(found.group(1).strip().split("\\s+")))
                .filter(word -> !ROLES.containsKey(word) && !word.equals("transparent"))
                .forEach(unknown::add);
        assertThat(unknown).isEmpty();
    }

    @Test
    void textGrowsToTwiceItsSize() {
        assertThat(StyleSheet.text(Ground.LIGHT, 100)).contains("-fx-font-size: 13.00px");
        assertThat(StyleSheet.text(Ground.LIGHT, 200))
                .contains("-fx-font-size: 26.00px")
                .doesNotContain("13.00px");
    }

    @ParameterizedTest
    @EnumSource(Ground.class)
    void everyRoleHasItsColourInTheSheet(Ground ground) {
        for (Role role : Role.values()) {
            assertThat(StyleSheet.text(ground, 100))
                    .contains(String.format(
                            Locale.ROOT,
                            "%s: #%06X;",
                            StyleSheet.property(role),
                            role.colour(ground).rgb()));
        }
    }

    @Test
    void sizeOfTextIsHeldBetweenItsBounds() {
        Theme theme = new Theme();

        theme.textPercent().set(400);
        assertThat(theme.textPercent().get()).isEqualTo(200);
        assertThat(theme.sized(13)).isEqualTo(26);

        theme.textPercent().set(10);
        assertThat(theme.textPercent().get()).isEqualTo(100);
    }
}
