package org.shelterwright.app.desk.study;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.about.ProgramVersion;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.study.StudyRunner;

/** The results of a small study whose runs take no time: units in a row, farther apart with each seed. */
public final class PostRuns {
    private static final String BRIEF = """
            {"format": "shelterwright-brief", "version": 1, "id": "small-post", "name": "Small Post",
             "body": "box-4200", "carrier": "truck-two-axle", "crew": 2, "ruleSets": ["shelter-common"],
             "units": [
               {"id": "rack-1", "name": "Rack 1", "item": "rack-19-34u", "group": "racks"},
               {"id": "battery-box", "name": "Battery box", "item": "battery-box-24v", "group": "power"},
               {"id": "winch", "name": "Winch crate", "item": "winch-crate", "group": "rescue"}]}
            """;
    private static final String STUDY = """
            {"format": "shelterwright-study", "version": 1, "id": "small-bodies", "name": "Small Post: bodies and batteries",
             "brief": "brief.json",
             "axes": [
               {"id": "body", "settings": [
                 {"id": "short"}, {"id": "long", "body": "box-6000", "carrier": "truck-three-axle"}]},
               {"id": "battery", "settings": [
                 {"id": "as-listed"},
                 {"id": "heavy", "items": [{"item": "battery-box-24v", "deeper": 40, "heavierKg": 12}]},
                 {"id": "tall", "items": [{"item": "battery-box-24v", "taller": "3 m"}]}]}],
             "seeds": {"first": 1, "count": 2}, "moves": 1000}
            """;

    private PostRuns() {}

    /** Runs the study into a folder. */
    public static StudyFolder run(Path folder) throws IOException {
        Files.writeString(folder.resolve("brief.json"), BRIEF);
        Checker checker = Checker.standard();
        StudyFiles files = new StudyFiles(
                BuiltInCatalog.read(),
                checker.ruleSets(),
                ProgramVersion.ofThisBuild().number());
        StudyFolder made = StudyFolder.prepare(
                folder.resolve("runs"),
                files.open(new InputFile("study.json", STUDY.getBytes(StandardCharsets.UTF_8)), folder)
                        .study());
        new StudyRunner(checker, inARow(checker)).run(made, 2, progress -> {}, new StopSignal());
        return made;
    }

    static RunBoard board(Path folder) throws IOException {
        StudyFolder made = run(folder);
        return new RunBoard(made.study(), made.table(), new Typeface());
    }

    private static Fitter inARow(Checker checker) {
        return (request, observer, stop) -> {
            Map<String, Placement> placements = new LinkedHashMap<>();
            int x = (int) request.seed() * 50;
            for (var unit : request.start().brief().units()) {
                placements.put(unit.id(), Placement.of(unit.id(), Place.onFloor(Pose.at(Point.ofMm(x, 0, 0)))));
                x += request.start().item(unit).size().x() / 1000 + 50 * (int) request.seed();
            }
            Layout layout = request.start().withPlacements(placements);
            return new FitResult(
                    List.of(new FitOption(layout, checker.check(layout), new FitScore(0, 0, 7))),
                    null,
                    1000,
                    Duration.ZERO);
        };
    }
}
