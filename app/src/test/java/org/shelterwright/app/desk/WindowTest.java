package org.shelterwright.app.desk;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import org.junit.jupiter.api.BeforeAll;
import org.shelterwright.app.desk.style.Fonts;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/**
 * A test in a real window. Without a display it is skipped and says so; {@code .ci/run} brings one, and {@code xvfb-run -a
 * -s "-screen 0 1920x1200x24" mvn ...} does by hand. Controls are made on the window's thread only, through {@link #onDesk}.
 */
public abstract class WindowTest {
    private static final int PATIENCE_S = 90;
    private static final int FRAMES_AT_REST = 3;

    /** Types and clicks as a person does. */
    protected final FxRobot robot = new FxRobot();

    @BeforeAll
    static void startToolkit() {
        String display = System.getenv("DISPLAY");
        assumeTrue(
                display != null && !display.isBlank(),
                "needs a display: run under xvfb-run -a -s \"-screen 0 1920x1200x24\"");
        System.setProperty("prism.forceGPU", "true");
        CompletableFuture<Void> started = new CompletableFuture<>();
        try {
            Platform.startup(() -> started.complete(null));
        } catch (IllegalStateException e) {
            started.complete(null);
        }
        started.join();
        onDesk(() -> {
            Platform.setImplicitExit(false);
            Fonts.load();
            return null;
        });
    }

    /** Does something on the window's thread and gives what came of it. */
    protected static <T> T onDesk(Callable<T> action) {
        CompletableFuture<T> result = new CompletableFuture<>();
        Runnable task = () -> {
            try {
                result.complete(action.call());
            } catch (Exception | AssertionError e) {
                result.completeExceptionally(e);
            }
        };
        if (Platform.isFxApplicationThread()) {
            task.run();
        } else {
            Platform.runLater(task);
        }
        try {
            return result.get(PATIENCE_S, TimeUnit.SECONDS);
        } catch (Exception e) {
            throw new AssertionError(e.getCause() == null ? e : e.getCause());
        }
    }

    /** Waits until something holds; asked on the window's thread. */
    protected static void await(String what, BooleanSupplier condition) {
        Instant latest = Instant.now().plusSeconds(PATIENCE_S);
        while (!onDesk(condition::getAsBoolean)) {
            if (Instant.now().isAfter(latest)) {
                fail("waited in vain: " + what);
            }
            WaitForAsyncUtils.sleep(30, TimeUnit.MILLISECONDS);
        }
    }

    /** Waits until what is seen stays the same from frame to frame: then no view moves, and everything has its place. */
    protected static void awaitRest(String what, Supplier<?> seen) {
        AtomicInteger same = new AtomicInteger();
        AnimationTimer frames = new AnimationTimer() {
            private Object before = new Object();

            @Override
            public void handle(long now) {
                Object next = seen.get();
                same.set(next.equals(before) ? same.get() + 1 : 0);
                before = next;
            }
        };
        onDesk(() -> {
            frames.start();
            return null;
        });
        await(what, () -> same.get() >= FRAMES_AT_REST);
        onDesk(() -> {
            frames.stop();
            return null;
        });
    }

    /** Keeps a picture of a scene as {@code target/desk/NAME.png}, to be looked at. */
    protected static Path picture(Scene scene, String name) {
        return Snapshots.keep(scene, name);
    }
}
