package org.shelterwright.layouts.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.ledger.access.AccessLimits;
import org.shelterwright.layouts.ledger.axles.AxleLimits;
import org.shelterwright.layouts.ledger.boltdown.BoltDownLimits;
import org.shelterwright.layouts.ledger.cables.CableLimits;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.layouts.ledger.floor.FloorLimits;
import org.shelterwright.layouts.ledger.heat.HeatLimits;
import org.shelterwright.layouts.ledger.lifting.LiftingLimits;
import org.shelterwright.layouts.ledger.mass.MassLimits;
import org.shelterwright.layouts.ledger.power.PowerLimits;
import org.shelterwright.layouts.ledger.racks.RackLimits;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.ledger.restraint.RestraintLimits;
import org.shelterwright.layouts.ledger.stability.StabilityLimits;
import org.shelterwright.layouts.ledger.stowage.StowageLimits;

/** A limit that is written but not listed would never be asked, and nobody would miss its row. */
class SubjectListsTest {
    @Test
    void everyLimitClassStandsInTheListOfItsSubject() throws Exception {
        Fasteners fasteners = Fasteners.builtIn();

        holds(AccessLimits.class, AccessLimits.all());
        holds(AxleLimits.class, AxleLimits.all());
        holds(BoltDownLimits.class, BoltDownLimits.all());
        holds(CableLimits.class, CableLimits.all());
        holds(FitLimits.class, FitLimits.all());
        holds(FloorLimits.class, FloorLimits.all());
        holds(HeatLimits.class, HeatLimits.all());
        holds(LiftingLimits.class, LiftingLimits.all());
        holds(MassLimits.class, MassLimits.all());
        holds(PowerLimits.class, PowerLimits.all());
        holds(RackLimits.class, RackLimits.all(fasteners));
        holds(RestraintLimits.class, RestraintLimits.all(fasteners));
        holds(StabilityLimits.class, StabilityLimits.all());
        holds(StowageLimits.class, StowageLimits.all());
    }

    private static void holds(Class<?> list, List<Limit> limits) throws Exception {
        String subject = list.getPackageName();
        List<Class<?>> listed = new ArrayList<>();
        limits.forEach(limit -> listed.add(limit.getClass()));

        assertThat(limits)
                .as(subject)
                .extracting(Limit::subject)
                .containsOnly(limits.get(0).subject());
        assertThat(limits).as(subject).allSatisfy(limit -> {
            assertThat(limit.id()).matches("[a-z]+(-[a-z]+)*\\.[a-z0-9]+(-[a-z0-9]+)*");
            assertThat(limit.title()).isNotBlank();
        });
        assertThat(listed).as(subject).containsAll(limitClassesUnder(list));
    }

    private static List<Class<?>> limitClassesUnder(Class<?> list) throws IOException, URISyntaxException {
        Path classes =
                Path.of(list.getProtectionDomain().getCodeSource().getLocation().toURI());
        Path folder = classes.resolve(list.getPackageName().replace('.', '/'));
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(file -> classes.relativize(file).toString())
                    .filter(name -> name.endsWith(".class") && !name.endsWith("package-info.class"))
                    .map(name -> load(
                            name.substring(0, name.length() - ".class".length()).replace(File.separatorChar, '.')))
                    .filter(one -> Limit.class.isAssignableFrom(one) && !Modifier.isAbstract(one.getModifiers()))
                    .<Class<?>>map(one -> one)
                    .toList();
        }
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, SubjectListsTest.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }
}
