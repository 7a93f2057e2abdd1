package org.shelterwright.app.desk.window;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicLong;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Window;
import org.shelterwright.app.Shelterwright;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * Measures the window. {@code start FILE} starts the program as a person does and prints the time from the start of the
 * process to the first picture; {@code drag [FILE]} drags a unit through the whole window, by default in a layout of 60, lets
 * it go, and gives orders by key, and prints how long the window's thread was busy at a time. Not a test: see DEVELOPERS.md,
 * "Measure".
 */
final class DragRun {
    private static final int WARM = 40;
    private static final int STEPS = 120;
    private static final int TIMES = 8;
    private static final double MS = 1e6;
    private static final List<String> ORDERS =
            List.of("edit.move-front", "edit.turn-left", "edit.pin", "edit.undo", "edit.redo");

    private final PrintStream out;
    private final DeskWindow window;
    private final Node view;
    private final Steps events = new Steps(STEPS);
    private final Steps drops = new Steps(STEPS);
    private final Steps orders = new Steps(STEPS);
    private final Steps pulses = new Steps(STEPS * 10);
    private final Steps waits = new Steps(STEPS * 100);
    private volatile boolean recording;

    private DragRun(PrintStream out, DeskWindow window) {
        this.out = out;
        this.window = window;
        view = window.stage().getScene().lookup("#space");
    }

    public static void main(String[] arguments) throws Exception {
        if (arguments[0].equals("start")) {
            start(arguments.length > 1 ? arguments[1] : "sample:river-post");
        } else {
            Path folder = Files.createTempDirectory("measured");
            Path file = folder.resolve("long-post.layout.json");
            LayoutFiles.write(LongPost.of(), file, Fingerprint.NONE);
            String name = arguments.length > 1 ? arguments[1] : file.toString();
            new DragRun(System.out, open(name, folder)).drag();
        }
        System.exit(0);
    }

    /** The command line as typed, on a thread of its own; this one waits until the window has been drawn. */
    private static void start(String name) throws Exception {
        Thread program = new Thread(() -> Shelterwright.main(new String[] {"desk", name}), "program");
        program.setDaemon(true);
        program.start();
        CompletableFuture<Long> drawn = new CompletableFuture<>();
        boolean started = false;
        while (!started) {
            try {
                Platform.runLater(() -> whenShown(() -> drawn.complete(System.currentTimeMillis())));
                started = true;
            } catch (IllegalStateException notYet) {
                Thread.sleep(2);
            }
        }
        long began = ManagementFactory.getRuntimeMXBean().getStartTime();
        System.out.println("first picture after " + (drawn.join() - began) + " ms");
        System.exit(0);
    }

    private static void whenShown(Runnable action) {
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                if (Window.getWindows().stream().anyMatch(Window::isShowing)) {
                    stop();
                    afterFrames(2, action);
                }
            }
        }.start();
    }

    private static DeskWindow open(String name, Path folder) throws Exception {
        DeskStart.prepareToolkit();
        CompletableFuture<DeskWindow> shown = new CompletableFuture<>();
        Platform.startup(() -> {
            Fonts.load();
            DeskWindow window =
                    Desks.open(name, folder, new ScriptedQuestions()).window();
            window.stage().setX(0);
            window.stage().setY(0);
            window.stage().setWidth(1600);
            window.stage().setHeight(1000);
            afterFrames(2, () -> shown.complete(window));
        });
        return shown.get();
    }

    /** Does something when so many frames were begun: the one before was drawn then. */
    private static void afterFrames(int frames, Runnable action) {
        new AnimationTimer() {
            private int left = frames;

            @Override
            public void handle(long now) {
                if (left-- == 0) {
                    stop();
                    action.run();
                }
            }
        }.start();
    }

    private void drag() throws Exception {
        Scene scene = window.stage().getScene();
        AtomicLong pulse = new AtomicLong();
        onDesk(() -> {
            scene.addPreLayoutPulseListener(() -> pulse.set(System.nanoTime()));
            scene.addPostLayoutPulseListener(() -> record(pulses, System.nanoTime() - pulse.get()));
        });
        Thread heartbeat = new Thread(this::beat, "heartbeat");
        heartbeat.setDaemon(true);
        heartbeat.start();
        Session session = window.session();
        Point2D from = hold(session);
        for (int i = 0; i < WARM + STEPS; i++) {
            double x = from.getX() - 160 * (1 - Math.cos(i / 40.0));
            double y = from.getY() + 70 * Math.sin(i / 23.0);
            recording = i >= WARM;
            onDesk(() -> {
                long begun = System.nanoTime();
                fire(MouseEvent.MOUSE_DRAGGED, x, y);
                record(events, System.nanoTime() - begun);
            });
            Thread.sleep(16);
        }
        onDesk(() -> {
            long begun = System.nanoTime();
            fire(MouseEvent.MOUSE_RELEASED, from.getX(), from.getY());
            record(drops, System.nanoTime() - begun);
        });
        Thread.sleep(1000);
        for (String order : ORDERS) {
            order(order);
        }
        recording = false;
        out.println("| what the window's thread did | times | median (ms) | 95 % (ms) | longest (ms) |");
        out.println("|---|---|---|---|---|");
        out.println(events.row("a step of the drag: catch, ledger, scene, columns"));
        out.println(drops.row("letting go"));
        out.println(orders.row("an order by key: " + String.join(", ", ORDERS)));
        out.println(pulses.row("laying out and drawing over the view, a frame"));
        out.println(waits.row("how long other work waited, with the waiting for the machine to draw"));
    }

    private void order(String id) throws InterruptedException {
        for (int i = 0; i < TIMES; i++) {
            onDesk(() -> {
                long begun = System.nanoTime();
                window.commands().run(id);
                record(orders, System.nanoTime() - begun);
            });
            Thread.sleep(100);
        }
    }

    /** Asks for the window's thread all the time: what it waits is how long something else kept that busy. */
    private void beat() {
        while (true) {
            long asked = System.nanoTime();
            onDesk(() -> record(waits, System.nanoTime() - asked));
            try {
                Thread.sleep(1);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    private void record(Steps steps, long nanos) {
        if (recording) {
            steps.add(nanos / MS);
        }
    }

    /** Takes hold of the first unit whose top is seen, and says where. */
    private Point2D hold(Session session) {
        for (PlacedUnit unit : session.now().scene().units()) {
            CompletableFuture<Point2D> held = new CompletableFuture<>();
            onDesk(() -> {
                Box outline = unit.outline(Situation.ON_STATION);
                Point centre = outline.centre();
                Point top = new Point(centre.x(), centre.y(), outline.z1());
                Point2D at =
                        view.screenToLocal(window.middle().space().orElseThrow().onScreen(top));
                fire(MouseEvent.MOUSE_PRESSED, at.getX(), at.getY());
                fire(MouseEvent.MOUSE_DRAGGED, at.getX() + 8, at.getY());
                if (session.now().tryingOut() && session.selection().holds(unit.id())) {
                    held.complete(at);
                } else {
                    session.giveUp();
                    fire(MouseEvent.MOUSE_RELEASED, at.getX(), at.getY());
                    held.complete(Point2D.ZERO);
                }
            });
            if (!held.join().equals(Point2D.ZERO)) {
                out.println("Held: " + unit.name() + ", of "
                        + session.now().scene().units().size() + " units.");
                return held.join();
            }
        }
        throw new IllegalStateException("No unit of the layout can be dragged.");
    }

    /** An event that has no source yet is in the coordinates of the scene. */
    private void fire(EventType<MouseEvent> type, double x, double y) {
        boolean down = type != MouseEvent.MOUSE_RELEASED;
        Point2D at = view.localToScene(x, y);
        view.fireEvent(new MouseEvent(
                type,
                at.getX(),
                at.getY(),
                at.getX(),
                at.getY(),
                MouseButton.PRIMARY,
                1,
                false,
                false,
                false,
                false,
                down,
                false,
                false,
                true,
                false,
                false,
                null));
    }

    private static void onDesk(Runnable action) {
        CompletableFuture<Void> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                action.run();
                done.complete(null);
            } catch (RuntimeException | Error e) {
                done.completeExceptionally(e);
            }
        });
        done.join();
    }
}
