package org.shelterwright.layouts.ledger.restraint.group;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A random group with a random force; every third has bolts beyond its contact, every fifth no contact at all. */
record RandomGroup(List<Bolt> bolts, List<Spot> contact, Force force) {
    static RandomGroup of(long seed) {
        Random random = new Random(seed);
        double reach = seed % 3 == 0 ? 0.6 : 1;
        List<Spot> contact = new ArrayList<>();
        int spots = seed % 5 == 0 ? 0 : 3 + random.nextInt(6);
        for (int i = 0; i < spots; i++) {
            contact.add(new Spot(reach * random.nextDouble(), reach * random.nextDouble()));
        }
        List<Bolt> bolts = new ArrayList<>();
        int count = 1 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            double stiffness = random.nextBoolean() ? 1 : 0.5 + random.nextDouble();
            bolts.add(new Bolt(random.nextDouble(), random.nextDouble(), stiffness, 1, 1));
        }
        double angle = 2 * Math.PI * random.nextInt(16) / 16;
        double along = 1000 * random.nextDouble();
        double off = seed % 4 == 0 ? 800 * random.nextDouble() : -1200 * random.nextDouble();
        Force force = new Force(
                along * Math.cos(angle),
                along * Math.sin(angle),
                off,
                random.nextDouble(),
                random.nextDouble(),
                1.5 * random.nextDouble());
        return new RandomGroup(bolts, contact, force);
    }

    FlatGroup group() {
        return new FlatGroup(bolts, contact);
    }
}
