package undercroft.report;

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

/** The four plots of a lot, drawn twice: wide, and narrow for a phone; the style sheet shows the one that fits. */
public final class LotPicture {

    private LotPicture() {}

    public static void write(Markup page, CellarOutlook outlook, BatchOutlook batch, LotOutlook lot, PageWords words) {
        Instant capped = batch.batch().cappedAt().orElseThrow();
        PlotStack stack = BatchPicture.of(
                batch, lot, words.words(), capped, PictureSpan.until(outlook, batch, lot), outlook.at());
        String title = "Carbonation, pressure, temperature and light of "
                + batch.batch().name();
        String described = description(lot, words);
        page.open("figure").open("div", "class", "wide");
        SvgPen.draw(page, Outlines.simplified(stack.layout(880, 560, TextMeasure.rough())), title, described);
        page.close("div").open("div", "class", "narrow");
        SvgPen.draw(page, Outlines.simplified(stack.layout(340, 720, TextMeasure.rough())), title, described);
        page.close("div");
        if (batch.lots().size() > 1) {
            page.open("figcaption")
                    .text(lot.left() + " × " + lot.pressure().bottle().label() + ", ");
            page.name(lot.place().name()).close("figcaption");
        }
        page.close("figure");
    }

    private static String description(LotOutlook lot, PageWords words) {
        return "Now " + words.volumes(lot.carbonation().atPresent().median()) + " of "
                + words.volumes(lot.carbonation().atEnd().median()) + " to come; "
                + words.bar(lot.pressure().atPresent().median()) + " where "
                + words.barLimit(lot.pressure().workingPressureBar()) + " is the limit, at most "
                + words.bar(lot.pressure().peakPast().median()) + " so far; bottles at "
                + words.celsius(lot.temperature().nowCelsius()) + "; light: "
                + new FigureWords(words.words()).light(lot.light()) + ". The table below has the figures.";
    }
}
