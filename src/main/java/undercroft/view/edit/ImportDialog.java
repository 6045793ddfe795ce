package undercroft.view.edit;

import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import undercroft.app.form.place.ImportForm;
import undercroft.app.form.place.ImportPreview;
import undercroft.app.form.place.ImportResult;
import undercroft.plot.mark.Palette;
import undercroft.view.kit.PlotsView;
import undercroft.view.kit.form.FormDialog;
import undercroft.view.kit.form.FormDialogs;
import undercroft.view.kit.form.FormGrid;
import undercroft.wording.Messages;

/** Asks for a logger's file, shows what it holds and what it would add, and brings it in. */
final class ImportDialog {
    private static final double PLOT_HEIGHT = 150;
    private static final Duration PROGRESS_STEP = Duration.millis(80);

    private final Messages messages;
    private final ImportForm form;
    private final FormDialog dialog;
    private final boolean dark;
    private final Label none = new Label();
    private final Button choose = new Button();
    private final VBox preview = new VBox();
    private final VBox result = new VBox();
    private final Button confirm;

    ImportDialog(FormDialogs dialogs, String placeName, ImportForm form, FileQuestions questions) {
        this.form = form;
        this.dark = dialogs.isDark();
        this.messages = dialogs.messages();
        none.setText(messages.of("form.import.none"));
        choose.setText(messages.of("form.import.choose"));
        VBox content = new VBox(none, choose, progress(), FormGrid.fault(form.faultProperty()), preview, result);
        content.getStyleClass().add("form-content");
        dialog = dialogs.bare(dialogs.owner(), dialogs.messages().of("form.import.title", placeName), content);
        none.setWrapText(true);
        preview.getStyleClass().add("form-content");
        result.getStyleClass().add("form-content");
        choose.setId("import-choose");
        choose.setOnAction(
                event -> questions.loggerFile(dialog.stage(), messages).ifPresent(form::choose));
        CheckBox follow = new CheckBox(dialogs.messages().of("form.import.follow"));
        follow.setId("import-follow");
        follow.selectedProperty().bindBidirectional(form.followsProperty());
        follow.visibleProperty().bind(form.resultProperty().isNotNull());
        follow.managedProperty().bind(follow.visibleProperty());
        content.getChildren().add(follow);
        confirm = dialog.confirm(dialogs.messages().of("form.import.button"), this::save);
        form.previewProperty().addListener((property, before, after) -> show(after));
        form.resultProperty().addListener((property, before, after) -> show(after));
        confirm.setDisable(true);
        form.followsProperty().addListener((property, before, after) -> confirm.setDisable(!form.canSave()));
        dialog.stage().setOnHidden(event -> form.callOff());
    }

    FormDialog open() {
        dialog.show(Optional.of(choose));
        return dialog;
    }

    private HBox progress() {
        ProgressBar bar = new ProgressBar(0);
        Button stop = new Button(messages.of("form.import.stop"));
        stop.setId("import-stop");
        stop.getStyleClass().add("quiet");
        stop.setOnAction(event -> form.callOff());
        HBox progress = new HBox(10, new Label(messages.of("form.import.reading")), bar, stop);
        progress.setAlignment(Pos.CENTER_LEFT);
        progress.visibleProperty().bind(form.workingProperty());
        progress.managedProperty().bind(progress.visibleProperty());
        Timeline watch = new Timeline(new KeyFrame(PROGRESS_STEP, event -> bar.setProgress(form.fractionDone())));
        watch.setCycleCount(Animation.INDEFINITE);
        form.workingProperty().addListener((property, before, working) -> {
            if (working) {
                bar.setProgress(0);
                watch.play();
            } else {
                watch.stop();
            }
        });
        return progress;
    }

    private void show(ImportPreview found) {
        preview.getChildren().clear();
        none.setVisible(found == null);
        none.setManaged(found == null);
        if (found != null) {
            choose.setText(messages.of("form.import.choose-other"));
            Label name = new Label(found.name());
            name.getStyleClass().add("form-section");
            Label words = new Label(found.words());
            words.getStyleClass().add("faint");
            words.setWrapText(true);
            preview.getChildren().addAll(name, new PreviewTable(found), words, new FormGrid().fields(form.fields()));
        }
    }

    private void show(ImportResult read) {
        result.getChildren().clear();
        confirm.setDisable(!form.canSave());
        if (read != null) {
            VBox lines = new VBox(2);
            lines.setId("import-lines");
            read.lines().forEach(line -> {
                Label label = new Label(line);
                label.setWrapText(true);
                label.setMinHeight(Label.USE_PREF_SIZE);
                lines.getChildren().add(label);
            });
            PlotsView plot = new PlotsView(messages, instant -> "");
            plot.setPalette(dark ? Palette.DARK : Palette.LIGHT);
            plot.setMinHeight(PLOT_HEIGHT);
            plot.setPrefHeight(PLOT_HEIGHT);
            plot.setFocusTraversable(false);
            plot.show(read.picture(), false);
            result.getChildren().addAll(plot, lines);
        }
    }

    private void save() {
        if (form.canSave()) {
            form.save();
            dialog.close();
        }
    }
}
