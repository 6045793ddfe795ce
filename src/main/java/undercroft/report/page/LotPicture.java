package undercroft.report.page;

import java.time.Instant;
import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.picture.BatchPicture;
import undercroft.picture.PictureSpan;
import undercroft.plot.PlotStack;
import undercroft.plot.SvgPen;
import undercroft.plot.mark.TextMeasure;
import undercroft.wording.FigureWords;
import undercroft.wording.ShelfWords;

/** The four plots of a lot, drawn twice: wide, and narrow for a phone; the style sheet shows the one that fits. */
public final class LotPicture {

    private LotPicture() {}

    public static void write(Markup page, CellarOutlook outlook, BatchOutlook batch, LotOutlook lot, ShelfWords words) {
        Instant capped = batch.batch().cappedAt().orElseThrow();
        PlotStack stack =
                BatchPicture.of(batch, lot, words, capped, PictureSpan.until(outlook, batch, lot), outlook.at());
        String title = words.of("report.picture.title", batch.batch().name());
        String described = description(lot, words);
        page.open("figure").open("div", "class", "wide");
        SvgPen.draw(page, Outlines.simplified(stack.layout(880, 560, TextMeasure.rough())), title, described);
        page.close("div").open("div", "class", "narrow");
        SvgPen.draw(page, Outlines.simplified(stack.layout(340, 720, TextMeasure.rough())), title, described);
        page.close("div");
        if (batch.lots().size() > 1) {
            page.open("figcaption")
                    .text(words.of(
                                    "report.picture.lot",
                                    lot.left(),
                                    lot.pressure().bottle()) + ", ");
            page.name(lot.place().name()).close("figcaption");
        }
        page.close("figure");
    }

    private static String description(LotOutlook lot, ShelfWords words) {
        return words.of(
                "report.picture.description",
                words.format().volumes(lot.carbonation().atPresent().median()),
                words.format().volumes(lot.carbonation().atEnd().median()),
                words.format().bar(lot.pressure().atPresent().median()),
                words.format().barLimit(lot.pressure().workingPressureBar()),
                words.format().bars(lot.pressure().peakPast()),
                words.format().celsius(lot.temperature().nowCelsius()),
                new FigureWords(words).light(lot.light()));
    }
}
