package undercroft.view.kit;

import java.util.ArrayList;
import java.util.List;
import javafx.print.PageLayout;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.stage.Window;
import undercroft.wording.Messages;

/** Prints plain lines, as many pages as it takes. */
public final class LinePrinter {
    private static final double GAP = 3;

    private LinePrinter() {}

    /** Prints and says what became of it. */
    public static String print(Messages messages, Window owner, List<String> lines) {
        if (Printer.getDefaultPrinter() == null && Printer.getAllPrinters().isEmpty()) {
            return messages.of("bottling.papers.no-printer");
        }
        PrinterJob job = PrinterJob.createPrinterJob();
        if (job == null) {
            return messages.of("bottling.papers.no-printer");
        }
        if (!job.showPrintDialog(owner)) {
            job.cancelJob();
            return "";
        }
        PageLayout layout = job.getJobSettings().getPageLayout();
        boolean printed = true;
        for (VBox page : pages(lines, layout.getPrintableWidth(), layout.getPrintableHeight())) {
            printed = printed && job.printPage(layout, page);
        }
        return messages.of(printed && job.endJob() ? "bottling.papers.printed" : "bottling.papers.not-printed");
    }

    /** The lines set in pages of a size in points; the first line is the title. */
    public static List<VBox> pages(List<String> lines, double width, double height) {
        List<VBox> pages = new ArrayList<>();
        double used = height;
        for (int i = 0; i < lines.size(); i++) {
            Text text = new Text(lines.get(i));
            text.setFont(Font.font("Inter", i == 0 ? 15 : 9));
            text.setFill(Color.BLACK);
            text.setWrappingWidth(width);
            double tall = text.getLayoutBounds().getHeight() + GAP;
            if (used + tall > height) {
                pages.add(new VBox(GAP));
                used = 0;
            }
            pages.get(pages.size() - 1).getChildren().add(text);
            used += tall;
        }
        return pages;
    }
}
