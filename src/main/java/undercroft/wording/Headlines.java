package undercroft.wording;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import undercroft.calc.light.LightBand;
import undercroft.catalogue.Cover;
import undercroft.cellar.Batch;
import undercroft.cellar.Draw;
import undercroft.cellar.SugarDose;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.CauseFigure;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.ReadyOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.quantity.Mass;
import undercroft.quantity.Volume;

/** The one sentence a person would say of a batch. */
public final class Headlines {
    private final Wording words;

    public Headlines(Wording words) {
        this.words = words;
    }

    /** What is to be said first of a batch: what is grave if anything is, else how far it has come. */
    public String of(BatchOutlook batch) {
        Stage stage = batch.stage();
        if (stage == Stage.FILLING) {
            return notCappedYet(batch.batch());
        }
        if (stage == Stage.EMPTY) {
            return gone(batch.batch());
        }
        Optional<Cause> leading = batch.verdict().leading();
        if (leading.isPresent()
                && leading.get().kind().topic() == Cause.Topic.PRESSURE
                && leading.get().alert() == Alert.ACT) {
            return overPressure(batch, leading.get());
        }
        LotOutlook main = batch.mainLot();
        return switch (stage) {
            case CARBONATING -> carbonating(batch.batch(), main);
            case CLEARING -> "Carbonated, clearing; " + readyWhen(main.ready()) + ". " + stock(batch);
            case READY -> ready(main) + stock(batch);
            case PAST_BEST_BEFORE ->
                "Past its keeping time"
                        + main.ageing()
                                .bestBefore()
                                .map(day -> " since " + words.day(day))
                                .orElse("")
                        + "; drink what is left soon. " + stock(batch);
            case FILLING, EMPTY -> throw new IllegalArgumentException("no bottles to speak of");
        };
    }

    /** A plan, or a batch seen as of a day before it was bottled. */
    private String notCappedYet(Batch batch) {
        return batch.cappedAt()
                .map(capped -> "Not bottled yet on this day; it was capped on " + words.day(capped) + ".")
                .orElseGet(() -> planned(batch));
    }

    private String planned(Batch batch) {
        String beer = Volume.ofLitres(batch.priming().beerLitres()).text(words.units());
        List<SugarDose> doses = batch.priming().doses();
        double grams = doses.stream().mapToDouble(SugarDose::grams).sum();
        String sugar = grams > 0 ? " with " + Mass.ofGrams(grams).text(words.units()) + " of priming sugar" : "";
        return "Planned: " + beer + sugar + "; it joins the shelf when it is capped.";
    }

    private String gone(Batch batch) {
        Instant last = batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .map(Draw::at)
                .filter(drawn -> !drawn.isAfter(words.at()))
                .max(Instant::compareTo)
                .orElse(words.at());
        return "All gone; the last bottle left on " + words.day(last) + ".";
    }

    private String overPressure(BatchOutlook batch, Cause cause) {
        LotOutlook lot = batch.lot(cause.lotId().orElseThrow());
        if (cause.kind() == Cause.Kind.BURST) {
            return Wording.bottles((int) cause.figure(CauseFigure.BOTTLES)) + " burst on "
                    + words.day(cause.since().orElseThrow()) + ". " + coolFirst(lot);
        }
        String limit = words.bar(cause.figure(CauseFigure.WORKING_PRESSURE_GAUGE_BAR));
        String which = batch.lots().size() > 1
                ? " in the " + Wording.bottles(lot.left()) + " in "
                        + lot.place().name()
                : "";
        return switch (cause.kind()) {
            case STRONGEST_OVER_WORKING_PRESSURE ->
                "Over-pressure" + which + ": the strongest may hold "
                        + words.bar(cause.figure(CauseFigure.STRONGEST_GAUGE_BAR)) + " where " + limit
                        + " is the limit. "
                        + coolFirst(lot);
            case PEAK_AHEAD_OVER_WORKING_PRESSURE ->
                "Pressure" + which + " may pass its limit of " + limit
                        + " in the weeks ahead (up to " + words.bar(cause.figure(CauseFigure.PEAK_AHEAD_GAUGE_BAR))
                        + "). Move it somewhere cooler.";
            default ->
                "The glass" + which + " has borne more than it is trusted with over this time. " + coolFirst(lot);
        };
    }

    private static String coolFirst(LotOutlook lot) {
        boolean boxed = lot.lot().stays().get(lot.lot().stays().size() - 1).cover() == Cover.CLOSED_BOX;
        return boxed
                ? "Cool the closed boxes before anybody touches them."
                : "Cover them with something thick, cool the place, and touch nothing until they are cold.";
    }

    private String carbonating(Batch batch, LotOutlook main) {
        String done = Wording.percent(main.carbonation().fractionDone().median());
        String place = main.place().name();
        String celsius = words.celsius(main.temperature().nowCelsius());
        switch (main.progress()) {
            case STALLED -> {
                return "Stalled by cold at " + celsius + " (" + place + "), " + done
                        + " done. Nothing is lost: it goes on when it stands warmer.";
            }
            case TOO_HOT -> {
                return "Too hot for the yeast at " + celsius + " (" + place + "), " + done
                        + " done. Move it somewhere cooler.";
            }
            default -> {}
        }
        String since = batch.cappedAt().map(words::day).orElse("");
        String slow = main.progress() == LotOutlook.Progress.SLOW ? "slowly " : "";
        return "Carbonating " + slow + "since " + since + ", " + done + " done; " + readyWhen(main.ready()) + ".";
    }

    private String readyWhen(ReadyOutlook ready) {
        if (ready.median().isEmpty()) {
            return "not ready within a year where it stands";
        }
        String about = "ready about " + words.day(ready.median().get());
        String from = ready.early()
                .map(day -> day.isAfter(words.at()) ? words.day(day) : "now")
                .orElse("");
        String until = ready.late().map(words::day).orElse("much later");
        return from.isEmpty() ? about : about + " (" + from + " to " + until + ")";
    }

    private String ready(LotOutlook main) {
        String since =
                main.ready().median().map(day -> " since " + words.day(day)).orElse("");
        double dose = main.light().dose().median();
        String light = dose >= LightBand.NEAR_CERTAIN.fromDose()
                ? ", but lightstruck"
                : dose >= LightBand.LIKELY.fromDose() ? ", but probably lightstruck" : "";
        return "Ready" + since + light + ". ";
    }

    private String stock(BatchOutlook batch) {
        double heat = batch.heatLimitLot().pressure().heatLimitCelsius();
        String safe = Double.isInfinite(heat)
                ? ", safe in any room"
                : heat < 0 ? "" : ", safe where it stands up to " + words.limitCelsius(heat);
        return Wording.bottles(batch.bottlesLeft()) + " left" + safe + ".";
    }
}
