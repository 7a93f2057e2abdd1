package org.shelterwright.app.desk.window;

import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.layouts.edit.TakeOutUnit;

/** A process of its own with a window in which a unit is taken out, and another is being dragged until it is killed. */
final class CrashingDesk {
    private CrashingDesk() {}

    public static void main(String[] arguments) throws InterruptedException {
        System.setProperty("prism.forceGPU", "true");
        Platform.startup(() -> {
            Fonts.load();
            DeskWindow window = Desks.open(arguments[0], Path.of(arguments[1]), new ScriptedQuestions())
                    .window();
            window.session().apply(new TakeOutUnit("rack-1"));
            window.session().tryOut(new TakeOutUnit("rack-2"));
        });
        new CountDownLatch(1).await();
    }
}
