package org.shelterwright.solver.load.packing;

import java.util.Arrays;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.block.Block;
import org.shelterwright.solver.load.block.BlockTable;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.space.Spaces;

/**
 * Finds the best blocks for a space. The candidates are the bits common to four sets; they come with the greatest key
 * first, and since every other factor of the score is at most 1, the search ends at the first key that is no better than
 * what was found.
 */
public final class Chooser {
    private final BlockTable table;
    private final PutRule rule;
    private final boolean free;
    private final Contact contact;
    private final Sums level;
    private final Sums upright;
    private int[] found = new int[16];
    private double[] scores = new double[16];
    private int n;

    public Chooser(BlockTable table, PutRule rule) {
        this.table = table;
        this.rule = rule;
        this.free = rule == PutRule.FREE;
        this.contact = new Contact(table);
        LoadProblem problem = table.problem();
        Size room = problem.room();
        this.level = new Sums(problem, Math.max(room.x(), room.y()), false);
        this.upright = new Sums(problem, room.z(), true);
    }

    /** Works out which lengths what is left can fill; to be called now and then while a load grows. */
    public void refresh(Packing packing) {
        level.refresh(packing);
        upright.refresh(packing);
    }

    /** The best block for a space, or -1 if none fits. */
    public int best(Packing packing, int space, Scoring scoring) {
        return best(packing, space, scoring, 1) == 0 ? -1 : found[0];
    }

    /** Finds up to {@code most} blocks for a space, the best first, and tells how many; see {@link #found}. */
    public int best(Packing packing, int space, Scoring scoring, int most) {
        if (found.length < most) {
            found = new int[most];
            scores = new double[most];
        }
        n = 0;
        Spaces spaces = packing.spaces();
        int sx = spaces.x1(space) - spaces.x0(space);
        int sy = spaces.y1(space) - spaces.y0(space);
        int sz = spaces.z1(space) - spaces.z0(space);
        long[] stocked = packing.stocked();
        long[] fitX = table.alongX(sx);
        long[] fitY = table.alongY(sy);
        long[] fitZ = table.alongZ(sz);
        double whole = (double) level.upTo(sx) * level.upTo(sy) * upright.upTo(sz);
        boolean minding = scoring.minding() && whole > 0;
        boolean looked = false;
        double bar = 0;
        for (int w = 0; w < stocked.length; w++) {
            long bits = stocked[w] & fitX[w] & fitY[w] & fitZ[w];
            while (bits != 0) {
                int b = (w << 6) + Long.numberOfTrailingZeros(bits);
                bits &= bits - 1;
                double score = table.key(b);
                if (score <= bar) {
                    return n;
                }
                int dx = table.dx(b);
                int dy = table.dy(b);
                int dz = table.dz(b);
                if (minding) {
                    score *= Math.min(1, filled(dx, dy, dz, sx, sy, sz) / whole);
                }
                if (scoring.noise() > 0) {
                    score *= scoring.luck(b);
                }
                if (score <= bar) {
                    continue;
                }
                if (!looked) {
                    contact.look(packing, space, scoring.near());
                    looked = true;
                }
                double limit = contact.most(dx, dy, dz);
                if (score * power(scoring, limit) <= bar) {
                    continue;
                }
                score *= power(scoring, contact.share(dx, dy, dz));
                if (score > bar && (free || allowed(packing, b, space))) {
                    bar = take(b, score, most);
                }
            }
        }
        return n;
    }

    /** The volume that can be filled in the space if the block stands in its corner. */
    private double filled(int dx, int dy, int dz, int sx, int sy, int sz) {
        return (double) (dx + level.upTo(sx - dx)) * (dy + level.upTo(sy - dy)) * (dz + upright.upTo(sz - dz));
    }

    private static double power(Scoring scoring, double share) {
        return scoring.contact()[(int) (share * Scoring.STEPS + 0.5)];
    }

    private boolean allowed(Packing packing, int b, int space) {
        Block block = table.block(b);
        Spaces spaces = packing.spaces();
        return rule.allows(
                packing,
                b,
                packing.atX(block, space),
                packing.atY(block, space),
                spaces.z0(space),
                spaces.highX(space),
                spaces.highY(space));
    }

    /** Keeps a block in order and gives the score that the next one must beat. */
    private double take(int b, double score, int most) {
        int at = n < most ? n++ : most - 1;
        while (at > 0 && scores[at - 1] < score) {
            scores[at] = scores[at - 1];
            found[at] = found[at - 1];
            at--;
        }
        scores[at] = score;
        found[at] = b;
        return n < most ? 0 : scores[most - 1];
    }

    /** The blocks found last. */
    public int[] found() {
        return Arrays.copyOf(found, n);
    }

    /** What practice asks. */
    public PutRule rule() {
        return rule;
    }
}
