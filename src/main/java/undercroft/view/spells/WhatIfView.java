package undercroft.view.spells;

import java.io.File;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import undercroft.app.spells.SpellTables;
import undercroft.app.spells.WhatIfForm;
import undercroft.app.spells.WhatIfPage;
import undercroft.app.spells.WhatIfViewModel;
import undercroft.view.kit.AlertSign;
import undercroft.view.kit.SavedFiles;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.form.FormGrid;

/** Asks what might happen and shows what would become of each batch. */
final class WhatIfView extends VBox {
    private final WhatIfViewModel model;
    private final WindowContext context;
    private final VBox question = new VBox(10);
    private final VBox answer = new VBox(8);

    WhatIfView(WhatIfViewModel model, WindowContext context) {
        this.model = model;
        this.context = context;
        getStyleClass().add("toll-list");
        setId("what-if");
        Label intro = words(context.messages().of("whatif.intro"), "faint");
        answer.setId("what-if-answer");
        getChildren().addAll(intro, question, answer);
        model.formProperty().addListener((property, before, after) -> ask(after));
        model.pageProperty().addListener((property, before, after) -> show(after));
        ask(model.formProperty().get());
        show(model.pageProperty().get());
    }

    private void ask(WhatIfForm form) {
        question.getChildren().clear();
        if (form == null) {
            return;
        }
        Button choose = new Button(context.messages().of("form.import.choose"));
        choose.getStyleClass().add("quiet");
        choose.setId("what-if-file");
        choose.visibleProperty().bind(form.file().askedProperty());
        choose.managedProperty().bind(choose.visibleProperty());
        choose.setOnAction(event -> {
            File file = new FileChooser().showOpenDialog(getScene().getWindow());
            if (file != null) {
                form.file().textProperty().set(file.toString());
            }
        });
        Button look = new Button(context.messages().of("whatif.ask.button"));
        look.setId("what-if-ask");
        look.setDefaultButton(false);
        look.getStyleClass().add("accent");
        look.disableProperty().bind(model.workingProperty());
        look.setOnAction(event -> context.faults().guard(model::ask));
        ProgressIndicator busy = new ProgressIndicator();
        busy.setPrefSize(18, 18);
        busy.visibleProperty().bind(model.workingProperty());
        Button doIt = new Button(context.messages().of("whatif.do.button"));
        doIt.setId("what-if-do");
        doIt.visibleProperty().bind(model.canDoProperty());
        doIt.setOnAction(event -> context.faults().guard(model::doIt));
        HBox buttons = new HBox(10, look, doIt, choose, busy);
        buttons.setAlignment(Pos.CENTER_LEFT);
        question.getChildren()
                .addAll(
                        new FormGrid().fields(form.fields()),
                        FormGrid.fault(form.faultProperty()),
                        buttons,
                        FormGrid.fault(model.faultProperty()));
    }

    private void show(WhatIfPage page) {
        answer.getChildren().clear();
        if (page == null) {
            return;
        }
        Label headline = words(page.headline(), "what-if-headline");
        headline.setId("what-if-headline");
        HBox.setHgrow(headline, Priority.ALWAYS);
        headline.setMaxWidth(Double.MAX_VALUE);
        HBox head = new HBox(8, new AlertSign(page.alert()), headline);
        head.getStyleClass().addAll("caution", AlertSign.styleClass(page.alert()));
        answer.getChildren().add(head);
        page.lines().forEach(line -> answer.getChildren().add(card(line)));
        if (!page.lines().isEmpty()) {
            answer.getChildren()
                    .add(TableButton.of(
                            "what-if-table",
                            context.messages(),
                            new SavedFiles(context, context.messages()),
                            "what-if",
                            () -> SpellTables.of(page, context.messages())));
        }
    }

    private Node card(WhatIfPage.Line line) {
        Button name = new Button(line.name());
        name.getStyleClass().addAll("quiet", "toll-name");
        name.setAccessibleText(context.messages().of("whatif.show.sentence", line.name()));
        name.setOnAction(event -> model.choose(line.change()));
        HBox head = new HBox(8, name, AlertSign.withWord(context.messages(), line.alert()));
        head.setAlignment(Pos.CENTER_LEFT);
        VBox card = new VBox(3, head, words(line.sentence(), "toll-verdict"));
        card.getStyleClass().add("toll");
        if (!line.fix().isEmpty()) {
            card.getChildren().add(words(line.fix(), "faint"));
        }
        if (model.canFix(line)) {
            Button fix = new Button(line.fixButton().orElseThrow());
            fix.setId("fix-" + line.change().batchId());
            fix.setOnAction(event -> context.faults().guard(() -> model.fix(line)));
            card.getChildren().add(fix);
        }
        card.setOnMouseClicked(event -> model.choose(line.change()));
        return card;
    }

    private static Label words(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
