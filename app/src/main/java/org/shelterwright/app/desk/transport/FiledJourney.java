package org.shelterwright.app.desk.transport;

import java.nio.file.Path;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.shelterwright.app.desk.file.Filed;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.transport.Load;

/** The journey of a session, once one is open. */
final class FiledJourney implements Filed<JourneyWork> {
    private final JourneySession session;
    private final Function<Path, JourneyWork> reading;

    /** @param reading reads the file of a journey with all that it refers to */
    FiledJourney(JourneySession session, Function<Path, JourneyWork> reading) {
        this.session = session;
        this.reading = reading;
    }

    @Override
    public String word() {
        return "journey";
    }

    @Override
    public History<JourneyWork> history() {
        return session.now().orElseThrow().history();
    }

    @Override
    public Ledger ledger() {
        return session.now().orElseThrow().ledger().all();
    }

    @Override
    public void onChange(Runnable action) {
        session.standing().addListener((observable, before, now) -> {
            if (now != null) {
                action.run();
            }
        });
    }

    @Override
    public void require(JourneyWork content) {
        session.checker().scene(content.journey(), content.parts());
    }

    @Override
    public void open(JourneyWork content) {
        session.open(content);
    }

    @Override
    public void take(String name, JourneyWork content) {
        session.apply(name, content);
    }

    @Override
    public String id(JourneyWork content) {
        return content.journey().id();
    }

    @Override
    public byte[] bytes(JourneyWork content) {
        return JourneyFiles.bytes(content.journey(), content.parts());
    }

    @Override
    public JourneyWork read(Path file) {
        return reading.apply(file);
    }

    /** Loads that differ, and one more if anything else does. */
    @Override
    public int differences(JourneyWork one, JourneyWork other) {
        int loads = (int) Stream.concat(one.journey().loads().stream(), other.journey().loads().stream())
                .map(Load::id)
                .distinct()
                .filter(id ->
                        !Objects.equals(one.journey().load(id), other.journey().load(id)))
                .count();
        boolean rest = !one.journey().withLoads(other.journey().loads()).equals(other.journey());
        return loads + (rest ? 1 : 0);
    }
}
