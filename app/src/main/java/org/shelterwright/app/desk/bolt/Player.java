package org.shelterwright.app.desk.bolt;

import javafx.animation.AnimationTimer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/** Shows how everything comes in, one unit after the other, at the pace of a person who carries; any other step stops it. */
final class Player {
    /** Pace (µm/s). */
    private static final double PACE = 1_200_000;

    private static final double LEAST_S = 0.8;
    private static final double REST_S = 0.4;
    private static final double NANOS = 1e9;

    private final BoltDesk desk;
    private final ReadOnlyBooleanWrapper playing = new ReadOnlyBooleanWrapper(false);
    private long last = -1;
    private double rest;
    private double expected;

    private final AnimationTimer timer = new AnimationTimer() {
        @Override
        public void handle(long now) {
            step(now);
        }
    };

    Player(BoltDesk desk) {
        this.desk = desk;
        desk.at().addListener((observable, before, now) -> {
            if (playing.get() && now.doubleValue() != expected) {
                stop();
            }
        });
    }

    ReadOnlyBooleanProperty playing() {
        return playing.getReadOnlyProperty();
    }

    void turn() {
        if (playing.get()) {
            stop();
        } else if (desk.stand().get().steps() > 0) {
            if (desk.at().get() >= desk.stand().get().steps()) {
                desk.at().set(0);
            }
            expected = desk.at().get();
            last = -1;
            rest = 0;
            playing.set(true);
            timer.start();
        }
    }

    void stop() {
        timer.stop();
        playing.set(false);
    }

    private void step(long now) {
        double seconds = last < 0 ? 0 : (now - last) / NANOS;
        last = now;
        if (rest > 0) {
            rest -= seconds;
            return;
        }
        double at = desk.at().get();
        int number = (int) Math.floor(at) + 1;
        if (number > desk.stand().get().steps()) {
            stop();
            return;
        }
        double length = length(number);
        double next = at + seconds / Math.max(LEAST_S, length / PACE);
        if (next >= number) {
            next = number;
            rest = REST_S;
        }
        expected = next;
        desk.at().set(next);
    }

    private double length(int number) {
        var plan = desk.stand().get().plan();
        return plan == null ? 0 : new Course(plan.steps().get(number - 1).passage()).length();
    }
}
