package org.shelterwright.app.cli.verb;

import java.util.Locale;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.solver.fit.FitObserver;
import org.shelterwright.solver.fit.FitProgress;
import org.shelterwright.solver.fit.FitScore;

/** Shows how far a search is, a few times a second. */
final class SearchProgress implements FitObserver {
    private static final long PAUSE_MS = 200;

    private final Terminal terminal;
    private long shownMs = -PAUSE_MS;

    SearchProgress(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void progress(FitProgress progress) {
        long nowMs = progress.elapsed().toMillis();
        if (terminal.live() && nowMs - shownMs >= PAUSE_MS) {
            shownMs = nowMs;
            terminal.progress(line(progress));
        }
    }

    static String line(FitProgress progress) {
        FitScore best = progress.best();
        return String.format(
                Locale.ROOT,
                "Searching %.1f s, %.1f M moves; best: unsafe %d, out of reach %d, wishes %d",
                progress.elapsed().toMillis() / 1e3,
                progress.moves() / 1e6,
                best.hard(),
                best.medium(),
                best.soft());
    }
}
