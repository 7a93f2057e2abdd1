package org.shelterwright.app.desk.ledger;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.style.Sign;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** The finding that is looked at: what, where, by how much, what would mend it, and where the limit comes from. */
final class FindingCard extends VBox {
    private final Commands commands;
    private final Naming naming;
    private final Sign sign;
    private final Label head = new Label();
    private final Label finding = text("");
    private final Label mend = text("");
    private final Label state = text("caption");
    private final Label source = text("caption");
    private final Label accepted = text("caption");
    private final Button show;
    private final Button accept;

    FindingCard(Commands commands, Theme theme, Naming naming) {
        super(5);
        this.commands = commands;
        this.naming = naming;
        sign = new Sign(theme, Verdict.MET);
        show = order("show-place", "Show place");
        accept = order("accept", "Accept with a reason");
        Button next = order("next-finding", "Next, F8");
        HBox title = new HBox(8, sign, head);
        title.setAlignment(Pos.CENTER_LEFT);
        FlowPane row = new FlowPane(2, 2, show, accept, next);
        getStyleClass().add("card");
        getChildren().addAll(title, finding, mend, state, source, accepted, row);
        setMinHeight(Region.USE_PREF_SIZE);
        setVisible(false);
        setManaged(false);
    }

    void show(Optional<Line.Entry> entry, Optional<Acceptance> acceptance) {
        setVisible(entry.isPresent());
        setManaged(entry.isPresent());
        entry.ifPresent(shown -> fill(shown, acceptance));
    }

    private void fill(Line.Entry entry, Optional<Acceptance> acceptance) {
        Row row = entry.row();
        String style = RowPane.style(row.verdict());
        getStyleClass().setAll("card", style);
        sign.show(row.verdict());
        head.setText((entry.mark().isEmpty() ? row.title() : entry.mark()) + " "
                + row.verdict().word());
        head.getStyleClass().setAll("label", "strong", style);
        write(finding, row.finding());
        write(mend, row.mend() == null ? "" : row.mend());
        write(state, row.state().isEmpty() ? "" : "State: " + row.state());
        write(source, "Source: " + row.source().text());
        write(accepted, acceptance.map(Acceptance::sentence).orElse(""));
        show.setDisable(row.units().isEmpty() && row.place() == null);
        show.setText(show.isDisabled() ? "Concerns " + naming.whole() : "Show place");
        boolean taken = acceptance.isPresent();
        accept.setText(taken ? "Accept no more" : "Accept with a reason");
        accept.setOnAction(event -> run(taken ? "withdraw" : "accept"));
        accept.setVisible(row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.NOT_ASSESSED);
        accept.setManaged(accept.isVisible());
    }

    private Button order(String command, String name) {
        Button button = new Button(name);
        button.getStyleClass().add("order");
        button.setOnAction(event -> run(command));
        return button;
    }

    private void run(String command) {
        commands.byId(naming.prefix() + command).map(Command::id).ifPresent(commands::run);
    }

    private static Label text(String style) {
        Label label = new Label();
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        if (!style.isEmpty()) {
            label.getStyleClass().add(style);
        }
        return label;
    }

    private static void write(Label label, String words) {
        label.setText(words);
        label.setVisible(!words.isEmpty());
        label.setManaged(!words.isEmpty());
    }
}
