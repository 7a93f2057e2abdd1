package org.shelterwright.app.desk.style;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import javafx.scene.Scene;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.look.Ground;
import org.shelterwright.app.look.Role;

/**
 * The style sheet of the window. The rules stand in {@code desk.css} beside this class; they name colours by role, as in
 * {@code -not-assessed-wash}, and sizes that grow with the text as {@code 13t}.
 */
public final class StyleSheet {
    private static final Pattern TEXT_SIZE = Pattern.compile("(\\d+(?:\\.\\d+)?)t\\b");

    private StyleSheet() {}

    /** Dresses a scene, now and whenever the theme changes. */
    public static void dress(Scene scene, Theme theme) {
        scene.getStylesheets().setAll(address(theme));
        theme.onChange(() -> scene.getStylesheets().setAll(address(theme)));
    }

    /** Dresses a scene that lives too short to see the theme change. */
    public static void dressOnce(Scene scene, Theme theme) {
        scene.getStylesheets().setAll(address(theme));
    }

    /** The whole sheet. */
    public static String text(Ground ground, int textPercent) {
        StringBuilder sheet = new StringBuilder(".root {\n");
        for (Role role : Role.values()) {
            sheet.append("    ")
                    .append(property(role))
                    .append(String.format(
                            Locale.ROOT, ": #%06X;%n", role.colour(ground).rgb()));
        }
        sheet.append("    -fx-font-family: \"")
                .append(Fonts.family(Weight.REGULAR))
                .append("\";\n}\n");
        return sheet.append(rules(textPercent)).toString();
    }

    /** The name of a role in the rules. */
    static String property(Role role) {
        return "-" + role.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String rules(int textPercent) {
        return TEXT_SIZE.matcher(template()).replaceAll(found -> px(found.group(1), textPercent));
    }

    private static String px(String size, int textPercent) {
        return String.format(Locale.ROOT, "%.2fpx", Double.parseDouble(size) * textPercent / 100);
    }

    private static String template() {
        try (InputStream in = StyleSheet.class.getResourceAsStream("desk.css")) {
            if (in == null) {
                throw new IllegalStateException("The style sheet is missing from the program: build it again.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> address(Theme theme) {
        byte[] sheet = text(theme.ground().get(), theme.textPercent().get()).getBytes(StandardCharsets.UTF_8);
        return List.of("data:text/css;base64," + Base64.getEncoder().encodeToString(sheet));
    }
}
