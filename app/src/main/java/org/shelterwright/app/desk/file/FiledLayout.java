package org.shelterwright.app.desk.file;

import java.nio.file.Path;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;

/** The layout of a session. */
public final class FiledLayout implements Filed<Layout> {
    private final Session session;

    public FiledLayout(Session session) {
        this.session = session;
    }

    @Override
    public String word() {
        return "layout";
    }

    @Override
    public History<Layout> history() {
        return session.now().history();
    }

    @Override
    public Ledger ledger() {
        return session.now().ledger();
    }

    @Override
    public void onChange(Runnable action) {
        session.standing().addListener((observable, before, now) -> action.run());
    }

    @Override
    public void require(Layout content) {
        session.checker().scene(content);
    }

    @Override
    public void open(Layout content) {
        session.open(content);
    }

    @Override
    public void take(String name, Layout content) {
        session.apply(name, content);
    }

    @Override
    public String id(Layout content) {
        return content.brief().id();
    }

    @Override
    public byte[] bytes(Layout content) {
        return LayoutFiles.bytes(content);
    }

    @Override
    public Layout read(Path file) {
        return LayoutFiles.read(file).layout();
    }

    @Override
    public int differences(Layout one, Layout other) {
        return Differences.count(one, other);
    }
}
