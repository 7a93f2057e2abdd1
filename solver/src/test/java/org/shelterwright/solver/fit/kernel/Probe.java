package org.shelterwright.solver.fit.kernel;

import java.util.List;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.*;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.solver.fit.model.*;
import org.shelterwright.solver.fit.planted.PlantedFit;

public class Probe {
    public static void main(String[] a) {
        int units = Integer.parseInt(a[0]);
        double slack = Double.parseDouble(a[1]);
        int seeds = Integer.parseInt(a[2]);
        double hot = Double.parseDouble(a[3]),
                cold = Double.parseDouble(a[4]),
                ch = Double.parseDouble(a[5]),
                dh = Double.parseDouble(a[6]);
        long round = Long.parseLong(a[7]);
        Checker checker = new Checker(new LimitBook(FitLimits.all()), List.of());
        for (int seed = 1; seed <= seeds; seed++) {
            PlantedFit fit = PlantedFit.of(seed, units, slack);
            var l = checker.check(fit.solution());
            if (l.worst() == Verdict.BROKEN) System.out.println(l.rows().get(0));
            long t0 = System.nanoTime();
            FitProblem p = FitProblem.of(checker.scene(fit.question()));
            long t1 = System.nanoTime();
            State s = new State(p);
            Dice dice = Dice.of(seed, 1);
            Construction c = new Construction(s, dice);
            long tried = c.placeAll(0.3);
            long t2 = System.nanoTime();
            System.out.printf(
                    "seed %d compile %d ms greedy %d ms tried %d %s unmountable %d%n",
                    seed,
                    (t1 - t0) / 1000000,
                    (t2 - t1) / 1000000,
                    tried,
                    s.score(),
                    p.unmountable().size());
            Meter m = new Meter(60_000_000, () -> System.nanoTime() - t2 > 20_000_000_000L);
            Best best = new Best();
            Annealer an = new Annealer(s, dice, m, x -> {});
            int r = 0;
            while (!m.over()) {
                an.round(new Schedule(round, hot, cold, new Weights(ch, ch), new Weights(dh, dh)), best);
                r++;
                System.out.printf(
                        "  round %d %s best %s moves %d in %d ms%n",
                        r, s.score(), best.score(), m.used(), (System.nanoTime() - t2) / 1000000);
                if (best.score().hard() + best.score().medium() == 0) break;
            }
            var lay = p.layout(best.spots());
            var led = checker.check(lay);
            System.out.println("  " + led.worst() + " " + led.rows().get(0).finding());
        }
    }
}
