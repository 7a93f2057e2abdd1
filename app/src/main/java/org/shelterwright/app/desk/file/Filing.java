package org.shelterwright.app.desk.file;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.SafeSave;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;

/**
 * Keeps what is on the desk in its file. Every change is kept at once beside the file until it is saved, so that a
 * process that is killed loses at most the change in hand. For the thread of the session; long work goes through {@link
 * Work}.
 *
 * @param <T> what stands in the file
 */
public final class Filing<T> implements AutoCloseable {
    private final Filed<T> desk;
    private final Work work;
    private final Clock clock;
    private final Path standIns;
    private final ReadOnlyObjectWrapper<OnFile<T>> state = new ReadOnlyObjectWrapper<>();
    private final Watch watch;
    private final ReadOnlyStringWrapper unkept = new ReadOnlyStringWrapper("");
    private Home<T> home;
    private @Nullable T kept;
    private boolean keeping;
    private boolean stale;

    /**
     * @param opened what the desk shows; it is taken over as what stands in the file
     * @param userFolder where unsaved work without a file is kept
     */
    public Filing(Filed<T> desk, OpenedFile<T> opened, Work work, Clock clock, Path userFolder) {
        this.desk = desk;
        this.work = work;
        this.clock = clock;
        standIns = userFolder.resolve(Home.STAND_INS);
        watch = new Watch(work, state::get);
        home = settle(opened);
        desk.onChange(() -> {
            settle();
            keepUnsaved();
        });
    }

    public ReadOnlyObjectProperty<OnFile<T>> state() {
        return state.getReadOnlyProperty();
    }

    /** A path that someone typed, with the usual ending where it has none. */
    public Path withEnding(Path path) {
        String name = String.valueOf(path.getFileName());
        return name.contains(".") ? path : path.resolveSibling(name + "." + desk.word() + ".json");
    }

    /** Whether another has changed the file since it was read or written here. */
    public ReadOnlyBooleanProperty changedOnDisk() {
        return watch.changed();
    }

    /** Whether that change was that the file went away. */
    boolean removed() {
        return watch.removed();
    }

    /** Why the last change is not kept in case the program ends; empty if it is. */
    ReadOnlyStringProperty unkept() {
        return unkept.getReadOnlyProperty();
    }

    public int changesSinceSave() {
        return state.get().changesSince(desk.history());
    }

    /** Unsaved work that was found when the layout was opened. */
    public Optional<Recovery<T>> recovery() {
        return home.found()
                .map(found -> new Recovery<>(
                        found.content(),
                        found.at(),
                        desk.differences(state.get().saved(), found.content())));
    }

    /** Takes the unsaved work that was found onto the desk, as one change that can be undone. */
    public void takeRecovery() {
        Optional<Recovery<T>> found = recovery();
        home = home.withoutFound();
        found.ifPresent(recovery -> desk.take("Take unsaved work", recovery.content()));
    }

    /** Lets the unsaved work that was found go. */
    public void dropRecovery() {
        home = home.withoutFound();
        home.unsaved().drop();
    }

    /**
     * Puts something else on the desk; what is unsaved of this one is dropped, so ask before.
     *
     * @throws IllegalArgumentException with a sentence if it names what there is not
     */
    public void open(OpenedFile<T> opened) {
        desk.require(opened.content());
        leave();
        kept = opened.content();
        desk.open(opened.content());
        home = settle(opened);
    }

    /**
     * Saves under the present name.
     *
     * @param over whether to write over what another has written since; never without having asked
     * @param done called when all is on the disk
     * @param failed called with a sentence if it could not be saved; nothing is lost then
     */
    public void save(boolean over, Runnable done, Consumer<String> failed) {
        OnFile<T> now = state.get();
        Path path = now.path();
        if (path == null || now.readOnly() != null) {
            failed.accept(
                    path == null ? "The " + desk.word() + " has no file yet. Save it under a name." : now.readOnly());
            return;
        }
        write(path, over ? null : now.fingerprint(), null, done, failed);
    }

    /** Whether the last save was not made because another has changed or removed the file. */
    boolean stale() {
        return stale;
    }

    /** Saves under a new name, which becomes the present one. A file that is there is replaced, so ask before. */
    public void saveAs(Path path, Runnable done, Consumer<String> failed) {
        if (home.claimed()
                && state.get().file().filter(now -> Home.same(now, path)).isPresent()) {
            write(path, null, null, done, failed);
            return;
        }
        Optional<Home<T>> fresh = Home.of(path, standIns, desk);
        if (fresh.isEmpty()) {
            failed.accept(path.getFileName() + " is open in another window ("
                    + Home.ofAnother(path, standIns, desk).holder() + "). Save under another name.");
            return;
        }
        write(path, null, fresh.get(), done, failed);
    }

    private void write(
            Path path,
            @Nullable Fingerprint expected,
            @Nullable Home<T> fresh,
            Runnable done,
            Consumer<String> failed) {
        History<T> history = desk.history();
        Ledger ledger = desk.ledger();
        T content = history.current();
        work.start(
                "Saving",
                () -> new SafeSave()
                        .save(path, desk.bytes(content), expected == null ? Fingerprint.of(path) : expected),
                held -> {
                    if (fresh != null) {
                        home.unsaved().end();
                        home.close();
                        home = fresh;
                    }
                    saved(path, held, history, ledger);
                    done.run();
                },
                failure -> {
                    if (fresh != null) {
                        fresh.close();
                    }
                    work.start(
                            "",
                            () -> expected != null && !Fingerprint.of(path).equals(expected),
                            (Consumer<Boolean>) changed -> notSaved(failure, changed, failed),
                            unreadable -> notSaved(failure, false, failed));
                });
    }

    private void notSaved(Exception failure, boolean changed, Consumer<String> failed) {
        stale = changed;
        failed.accept(sentence(failure));
    }

    private void saved(Path path, Fingerprint held, History<T> history, Ledger ledger) {
        T content = history.current();
        boolean further = !desk.history().current().equals(content);
        state.set(new OnFile<>(path, held, content, ledger, history.undoNames().size(), clock.instant(), null));
        watch.settle();
        unkept.set("");
        if (further) {
            keepUnsaved();
        } else {
            kept = content;
            home.unsaved().drop();
        }
    }

    /** Looks whether another has changed the file; to be called every few seconds. */
    public void look() {
        watch.look();
    }

    /** Stays with what is on the desk although the file was changed by another; saving then asks. */
    public void ignoreChange() {
        watch.ignore();
    }

    /** Lets go of the file; what is unsaved is dropped, so ask before. */
    @Override
    public void close() {
        leave();
    }

    private void leave() {
        if (home.claimed() && home.found().isEmpty()) {
            home.unsaved().end();
        }
        home.close();
    }

    private Home<T> settle(OpenedFile<T> opened) {
        boolean ownFile = !opened.fingerprint().equals(Fingerprint.NONE);
        Path path = ownFile ? Path.of(opened.name()) : null;
        Home<T> settled = path == null
                ? Home.without(standIns, desk.id(opened.content()), desk)
                : Home.of(path, standIns, desk).orElseGet(() -> Home.ofAnother(path, standIns, desk));
        Ledger ledger = desk.ledger();
        kept = opened.content();
        watch.settle();
        unkept.set("");
        state.set(new OnFile<>(
                path, opened.fingerprint(), opened.content(), ledger, 0, clock.instant(), settled.readOnly(path)));
        return settled;
    }

    /** What of the ledger was still to come when the content was read or written, has come. */
    private void settle() {
        OnFile<T> file = state.get();
        Ledger now = desk.ledger();
        if (awaits(file.ledger()) && !awaits(now) && desk.history().current() == file.saved()) {
            state.set(file.withLedger(now));
        }
    }

    private static boolean awaits(Ledger ledger) {
        return ledger.rows().stream().anyMatch(Row::awaited);
    }

    private void keepUnsaved() {
        T content = desk.history().current();
        if (keeping || content.equals(kept) || !home.claimed()) {
            return;
        }
        Unsaved<T> unsaved = home.unsaved();
        boolean same = changesSinceSave() == 0;
        keeping = true;
        kept = content;
        home = home.withoutFound();
        work.start(
                "",
                () -> {
                    if (same) {
                        unsaved.drop();
                    } else {
                        unsaved.keep(content);
                    }
                    return content;
                },
                done -> keptOne(""),
                failure -> keptOne(sentence(failure)));
    }

    private void keptOne(String fault) {
        keeping = false;
        unkept.set(fault);
        keepUnsaved();
    }

    private static String sentence(Exception failure) {
        return failure instanceof InputException input
                ? input.problems().get(0).sentence()
                : "It could not be saved (" + failure.getMessage() + "). Save under another name.";
    }
}
