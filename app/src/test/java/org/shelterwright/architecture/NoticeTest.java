package org.shelterwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class NoticeTest {

    private static final Pattern LIBRARY = Pattern.compile(
            "(.+?)-(\\d[^-]*(?:-(?!linux|mac|win)[A-Za-z0-9]+)?)(?:-(?:linux|mac|win)[a-z0-9-]*)?\\.jar");

    @Test
    void everyLibraryOnTheClassPathIsNamedWithItsVersion() throws IOException {
        String notice = Files.readString(Path.of("../NOTICE"));

        List<String> libraries = Arrays.stream(classPath().split(File.pathSeparator))
                .map(entry -> Path.of(entry).getFileName().toString())
                .filter(name -> !name.startsWith("shelterwright-"))
                .flatMap(name -> LIBRARY.matcher(name).results())
                .map(NoticeTest::nameAndVersion)
                .toList();

        assertThat(libraries).anyMatch(library -> library.startsWith("jackson-databind "));
        assertThat(libraries)
                .as("libraries without a line \"name version\" in NOTICE: add them with licence and use")
                .allSatisfy(library -> assertThat(notice).contains(" " + library + " "));
    }

    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    private static String nameAndVersion(MatchResult jar) {
        return jar.group(1) + " " + jar.group(2);
    }
}
