package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.solver.route.net.Link;

/** Links with what they stand for. Not for several threads. */
final class LinkList {
    private final List<Link> links = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();

    void add(Link link, Piece piece) {
        links.add(link);
        pieces.add(piece);
    }

    List<Link> links() {
        return links;
    }

    Piece piece(int number) {
        return pieces.get(number);
    }

    int size() {
        return links.size();
    }
}
