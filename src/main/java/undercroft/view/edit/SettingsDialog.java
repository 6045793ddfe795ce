package undercroft.view.edit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.app.form.cellar.BottleForm;
import undercroft.app.form.cellar.SettingsForm;
import undercroft.app.form.cellar.SugarForm;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.session.Workspace;
import undercroft.view.kit.form.FormDialog;
import undercroft.view.kit.form.FormDialogs;
import undercroft.view.kit.form.FormGrid;

/** Asks what holds for the whole cellar. */
final class SettingsDialog {
    private final FormDialogs dialogs;
    private final Workspace workspace;
    private final SettingsForm form;
    private FormDialog dialog;

    private SettingsDialog(FormDialogs dialogs, Workspace workspace, Instant now) {
        this.dialogs = dialogs;
        this.workspace = workspace;
        this.form = new SettingsForm(dialogs.messages(), workspace.getCellar(), now);
    }

    static FormDialog open(FormDialogs dialogs, Workspace workspace, Instant now) {
        return new SettingsDialog(dialogs, workspace, now).open();
    }

    private FormDialog open() {
        FormGrid grid = new FormGrid()
                .fields(form.fields())
                .section(dialogs.messages().of("form.settings.section.bottles"))
                .wide(list(
                        "bottles",
                        Cellar::ownBottles,
                        make -> bottle(Optional.of(make)),
                        form::remove,
                        () -> bottle(Optional.empty())))
                .section(dialogs.messages().of("form.settings.section.sugars"))
                .wide(list(
                        "sugars",
                        Cellar::ownSugars,
                        sugar -> sugar(Optional.of(sugar)),
                        form::remove,
                        () -> sugar(Optional.empty())));
        dialog = dialogs.open(
                dialogs.owner(), dialogs.messages().of("form.settings.title"), form, grid, () -> form.save(workspace));
        return dialog;
    }

    private <T extends Listed> VBox list(
            String key, Function<Cellar, List<T>> entries, Consumer<T> change, Consumer<T> remove, Runnable add) {
        VBox rows = new VBox();
        Runnable show = () -> {
            List<T> all = entries.apply(form.draft());
            rows.getChildren().clear();
            if (all.isEmpty()) {
                Label none = new Label(dialogs.messages().of("form.settings." + key + ".none"));
                none.getStyleClass().add("faint");
                rows.getChildren().add(none);
            }
            all.forEach(entry -> rows.getChildren().add(row(entry, change, remove)));
        };
        form.draftProperty().addListener((property, before, after) -> {
            show.run();
        });
        show.run();
        Button button = quiet(dialogs.messages().of("form.settings." + key + ".add"), add);
        button.setId("settings-" + key + "-add");
        VBox list = new VBox(4, rows, button);
        list.getStyleClass().add("form-list");
        return list;
    }

    private <T extends Listed> HBox row(T entry, Consumer<T> change, Consumer<T> remove) {
        Label name = new Label(dialogs.messages().name(entry));
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        Button edit = quiet(dialogs.messages().of("form.settings.row.change"), () -> change.accept(entry));
        edit.setAccessibleText(dialogs.messages()
                .of(
                        "form.settings.row.sentence",
                        edit.getText(),
                        dialogs.messages().name(entry)));
        Button away = quiet(dialogs.messages().of("form.button.remove"), () -> remove.accept(entry));
        away.setAccessibleText(dialogs.messages()
                .of(
                        "form.settings.row.sentence",
                        away.getText(),
                        dialogs.messages().name(entry)));
        HBox row = new HBox(4, name, edit, away);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("list-row");
        return row;
    }

    private Button quiet(String words, Runnable act) {
        Button button = new Button(words);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> {
            try {
                act.run();
            } catch (InvalidInput fault) {
                form.showFault(fault);
            }
        });
        return button;
    }

    private void bottle(Optional<BottleType> before) {
        BottleForm asked = new BottleForm(dialogs.messages(), form.draft(), before);
        dialogs.open(
                dialog.stage(),
                before.map(make -> dialogs.messages()
                                .of("form.bottle.title.edit", dialogs.messages().name(make)))
                        .orElseGet(() -> dialogs.messages().of("form.bottle.title.add")),
                asked,
                new FormGrid().fields(asked.fields()),
                () -> form.change(asked::applyTo));
    }

    private void sugar(Optional<Sugar> before) {
        SugarForm asked = new SugarForm(dialogs.messages(), form.draft(), before);
        dialogs.open(
                dialog.stage(),
                before.map(sugar -> dialogs.messages()
                                .of("form.sugar.title.edit", dialogs.messages().name(sugar)))
                        .orElseGet(() -> dialogs.messages().of("form.sugar.title.add")),
                asked,
                new FormGrid().fields(asked.fields()),
                () -> form.change(asked::applyTo));
    }
}
