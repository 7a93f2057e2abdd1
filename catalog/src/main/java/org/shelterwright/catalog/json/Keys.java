package org.shelterwright.catalog.json;

import java.util.Collection;

/** What is wrong with the keys of an object. */
final class Keys {
    private Keys() {}

    static void tellUnknown(Node.ObjectNode object, Collection<String> known, Trail trail) {
        for (Node.Member member : object.members()) {
            if (!known.contains(member.key())) {
                trail.tell(
                        member.spot(),
                        "The key " + Texts.quoted(member.key()) + " is not known in " + trail.here() + "."
                                + NearestName.hint(member.key(), known));
            }
        }
    }

    static void tellMissing(Node.ObjectNode object, String key, Trail trail) {
        trail.tell(object.spot(), "The key \"" + key + "\" is missing in " + trail.here() + ".");
    }
}
