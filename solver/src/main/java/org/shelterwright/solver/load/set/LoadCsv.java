package org.shelterwright.solver.load.set;

import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.Stowed;

/** A load of a published problem as CSV, a row for each piece, in the units of its set. */
public final class LoadCsv {
    /** The first line. */
    public static final String HEAD = "problem,type,x,y,z,dx,dy,dz";

    private LoadCsv() {}

    /** Gives the table; kinds are called by their names, which are the numbers of the set. */
    public static String of(int problem, List<CargoKind> kinds, Load load) {
        StringBuilder text = new StringBuilder(HEAD).append('\n');
        for (Stowed one : load.stowed()) {
            Box box = one.box();
            text.append(problem)
                    .append(',')
                    .append(kinds.get(one.kind()).name())
                    .append(',')
                    .append(box.x0())
                    .append(',')
                    .append(box.y0())
                    .append(',')
                    .append(box.z0())
                    .append(',')
                    .append(box.x1() - box.x0())
                    .append(',')
                    .append(box.y1() - box.y0())
                    .append(',')
                    .append(box.z1() - box.z0())
                    .append('\n');
        }
        return text.toString();
    }
}
