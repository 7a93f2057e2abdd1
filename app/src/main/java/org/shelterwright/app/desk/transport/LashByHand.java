package org.shelterwright.app.desk.transport;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.edit.AddLashing;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** Lashes the selected piece by hand: from an eye, or over it, to anchor points that are named. */
final class LashByHand {
    private static final String OVER = "Over it, from side to side";

    private final JourneySession session;
    private final Questions questions;
    private final StandSheet sheet;

    LashByHand(JourneySession session, Questions questions) {
        this.session = session;
        this.questions = questions;
        sheet = new StandSheet(session);
    }

    void addTo(Commands commands) {
        commands.add(new Command(
                "journey.lash",
                "Lash the selected piece by hand",
                List.of("transport", "strap", "chain"),
                List.of(),
                this::obstacle,
                this::ask));
    }

    private Optional<String> obstacle() {
        if (sheet.placed().isEmpty()) {
            return Optional.of("Select a piece that stands on this car first.");
        }
        return session.load()
                .filter(load -> load.car().anchors().isEmpty())
                .map(load ->
                        "The " + load.car().name() + " has no anchor points. Take a car that has, or block the piece.");
    }

    private void ask() {
        PlacedPiece piece = sheet.placed().orElseThrow();
        PlacedLoad load = session.load().orElseThrow();
        List<LashingKind> kinds =
                session.now().orElseThrow().scene().parts().transit().lashings();
        List<String> eyes = new java.util.ArrayList<>(
                piece.shape().eyes().stream().map(Provision::name).toList());
        eyes.add(OVER);
        Optional<Integer> kind = pick(piece, "What with?", kinds.stream().map(LashingKind::name));
        Optional<Integer> eye = kind.flatMap(chosen -> pick(piece, "From where?", eyes.stream()));
        if (kind.isEmpty() || eye.isEmpty()) {
            return;
        }
        boolean over = eyes.get(eye.get()).equals(OVER);
        anchor(load, over ? "The anchor point on one side:" : "The anchor point that it goes to:")
                .flatMap(first -> over
                        ? anchor(load, "The anchor point on the other side:")
                                .map(second -> Lashing.over(
                                        key(load), kinds.get(kind.get()).id(), List.of(piece.id()), first, second))
                        : Optional.of(Lashing.direct(
                                key(load), kinds.get(kind.get()).id(), piece.id(), eyes.get(eye.get()), first)))
                .ifPresent(lashing -> session.apply(new AddLashing(load.id(), lashing)));
    }

    private Optional<Integer> pick(PlacedPiece piece, String sentence, Stream<String> names) {
        return questions.pick(
                "Lash " + piece.name(),
                sentence,
                names.map(name -> new Questions.Choice(name, "")).toList());
    }

    private Optional<String> anchor(PlacedLoad load, String sentence) {
        String first = load.car().anchors().get(0).name();
        String last = load.car().anchors().get(load.car().anchors().size() - 1).name();
        return questions
                .text(
                        "Lash by hand",
                        sentence,
                        "Anchor point, from " + first + " to " + last,
                        "",
                        "Go on",
                        typed -> load.car().anchor(typed.strip()).isPresent()
                                ? Optional.empty()
                                : Optional.of("There is no anchor point \"" + typed.strip() + "\" on the "
                                        + load.car().name() + ". They go from " + first + " to " + last + "."))
                .map(String::strip);
    }

    /** The first free key: "H1", "H2"... for lashings by hand. */
    private static String key(PlacedLoad load) {
        for (int i = 1; ; i++) {
            String key = "H" + i;
            if (load.load().lashings().stream().noneMatch(one -> one.key().equals(key))) {
                return key;
            }
        }
    }
}
