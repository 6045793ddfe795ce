package undercroft.view.help;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.help.HelpBlock;
import undercroft.app.help.Library;
import undercroft.session.BackgroundTasks;
import undercroft.wording.Messages;

/** The parts of a page of the help as nodes. */
final class HelpBlocks {
    private static final int LICENCE_ROWS = 16;

    private final Messages messages;
    private final BackgroundTasks tasks;
    private final ObservableBooleanValue dark;

    HelpBlocks(Messages messages, BackgroundTasks tasks, ObservableBooleanValue dark) {
        this.messages = messages;
        this.tasks = tasks;
        this.dark = dark;
    }

    Node node(HelpBlock block) {
        if (block instanceof HelpBlock.Heading heading) {
            return styled(heading.text(), "section-title", "help-heading");
        }
        if (block instanceof HelpBlock.Paragraph paragraph) {
            return text(paragraph.text());
        }
        if (block instanceof HelpBlock.Steps steps) {
            return steps(steps.all());
        }
        if (block instanceof HelpBlock.Points points) {
            VBox box = new VBox(4);
            points.all().forEach(point -> box.getChildren().add(marked("•", point)));
            return box;
        }
        if (block instanceof HelpBlock.Terms terms) {
            VBox box = new VBox(10);
            terms.all()
                    .forEach(term ->
                            box.getChildren().add(new VBox(1, styled(term.name(), "help-term"), text(term.text()))));
            return box;
        }
        if (block instanceof HelpBlock.Table table) {
            return table(table);
        }
        if (block instanceof HelpBlock.Licensed licensed) {
            return licensed(licensed.library());
        }
        return picture((HelpBlock.Picture) block);
    }

    Label title(String words) {
        return styled(words, "help-title");
    }

    Label text(String words) {
        return styled(words, "help-text");
    }

    private static Label styled(String words, String... styles) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(styles);
        return label;
    }

    private Node steps(List<String> all) {
        VBox box = new VBox(6);
        for (int i = 0; i < all.size(); i++) {
            box.getChildren().add(marked(Integer.toString(i + 1), all.get(i)));
        }
        return box;
    }

    private Node marked(String mark, String words) {
        Label number = new Label(mark);
        number.getStyleClass().add("help-mark");
        number.setMinWidth(22);
        Label text = text(words);
        HBox.setHgrow(text, Priority.ALWAYS);
        return new HBox(6, number, text);
    }

    private Node table(HelpBlock.Table table) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("help-table");
        int columns = table.columns().size();
        for (int column = 0; column < columns; column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setPercentWidth(100.0 * share(column, columns));
            width.setHalignment(HPos.LEFT);
            grid.getColumnConstraints().add(width);
            grid.add(cell(table.columns().get(column), "help-column"), column, 0);
        }
        for (int row = 0; row < table.rows().size(); row++) {
            List<String> cells = table.rows().get(row);
            for (int column = 0; column < columns; column++) {
                grid.add(cell(cells.get(column), column == 0 ? "help-first" : "help-cell"), column, row + 1);
            }
        }
        return grid;
    }

    /** The first column and the last hold words, those between them figures. */
    private static double share(int column, int columns) {
        if (columns == 2) {
            return column == 0 ? 0.38 : 0.62;
        }
        if (columns == 3) {
            return column == 1 ? 0.24 : 0.38;
        }
        return columns == 4 ? new double[] {0.3, 0.17, 0.17, 0.36}[column] : 1.0 / columns;
    }

    private static Label cell(String words, String style) {
        Label label = styled(words, style);
        label.setMaxWidth(Double.MAX_VALUE);
        label.setMaxHeight(Double.MAX_VALUE);
        GridPane.setValignment(label, VPos.TOP);
        GridPane.setHgrow(label, Priority.ALWAYS);
        return label;
    }

    private Node licensed(Library library) {
        Label name = new Label(library.name());
        name.getStyleClass().add("help-term");
        Label licence = new Label(library.licence());
        licence.getStyleClass().add("faint");
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        Button show = new Button(messages.of("help.about.show"));
        show.getStyleClass().addAll("quiet", "small");
        show.setMinWidth(Region.USE_PREF_SIZE);
        show.setAccessibleText(messages.of("help.about.show-sentence", library.name()));
        HBox line = new HBox(10, name, licence, between, show);
        line.getStyleClass().add("help-library");
        VBox box = new VBox(4, line);
        show.setOnAction(event -> {
            boolean isShown = box.getChildren().size() > 1;
            show.setText(messages.of(isShown ? "help.about.show" : "help.about.hide"));
            if (isShown) {
                box.getChildren().remove(1);
            } else {
                box.getChildren().add(licenceText(library));
            }
        });
        return box;
    }

    private Node licenceText(Library library) {
        TextArea area = new TextArea();
        area.setEditable(false);
        area.setWrapText(true);
        area.setPrefRowCount(LICENCE_ROWS);
        area.setAccessibleText(library.licence());
        area.getStyleClass().add("help-licence");
        tasks.run(() -> read(library.text()), area::setText, fault -> area.setText(messages.fault(fault)));
        return area;
    }

    private static String read(String resource) throws IOException {
        try (InputStream file = HelpBlocks.class.getResourceAsStream(resource)) {
            if (file == null) {
                throw new IOException(resource);
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private Node picture(HelpBlock.Picture picture) {
        return new HelpPicture(picture, messages, dark);
    }
}
