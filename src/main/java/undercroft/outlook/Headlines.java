package undercroft.outlook;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import undercroft.cellar.Batch;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.SugarDose;
import undercroft.quantity.Mass;
import undercroft.quantity.Volume;

/** The one sentence a person would say of a batch. */
final class Headlines {
    private final Wording words;

    Headlines(Wording words) {
        this.words = words;
    }

    String planned(Batch batch) {
        String beer = Volume.ofLitres(batch.priming().beerLitres()).text(words.units());
        List<SugarDose> doses = batch.priming().doses();
        double grams = doses.stream().mapToDouble(SugarDose::grams).sum();
        String sugar = grams > 0 ? " with " + Mass.ofGrams(grams).text(words.units()) + " of priming sugar" : "";
        return "Planned: " + beer + sugar + "; it joins the shelf when it is capped.";
    }

    String gone(Batch batch) {
        Instant last = batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .map(Draw::at)
                .filter(drawn -> !drawn.isAfter(words.at()))
                .max(Instant::compareTo)
                .orElse(words.at());
        return "All gone; the last bottle left on " + words.day(last) + ".";
    }

    String of(Batch batch, Stage stage, LotOutlook main, LotOutlook tightest, int left) {
        if (tightest.pressure().alert() == Alert.ACT) {
            return overPressure(tightest);
        }
        return switch (stage) {
            case CARBONATING -> carbonating(batch, main);
            case CLEARING -> "Carbonated"
                    + main.ready()
                            .median()
                            .map(day -> "; ready about " + words.day(day))
                            .orElse("")
                    + ", when the yeast has cleaned up. " + stock(main, left);
            case READY -> ready(main) + stock(main, left);
            case TIRED -> "Past its keeping time"
                    + main.ageing()
                            .bestBefore()
                            .map(day -> " since " + words.day(day))
                            .orElse("")
                    + "; drink what is left soon. " + stock(main, left);
            case FILLING, EMPTY -> throw new IllegalArgumentException("no bottles to speak of");
        };
    }

    private String overPressure(LotOutlook tightest) {
        PressureOutlook pressure = tightest.pressure();
        String limit = words.bar(pressure.limitBar());
        if (pressure.strongestBottle().high() > pressure.limitBar()) {
            return "Over-pressure: the strongest bottle may hold "
                    + words.bar(pressure.strongestBottle().high()) + " where " + limit
                    + " is the limit. Cool the closed boxes before anybody touches them.";
        }
        if (pressure.peakAhead().high() > pressure.limitBar()) {
            return "Pressure may pass its limit of " + limit + " in the weeks ahead (up to "
                    + words.bar(pressure.peakAhead().high()) + "). Move it somewhere cooler.";
        }
        return "The glass has borne more than it is trusted with over this time. Cool it before touching, and drink it soon.";
    }

    private String carbonating(Batch batch, LotOutlook main) {
        String done = Wording.percent(main.carbonation().fractionDone().median());
        String place = main.place().name().toLowerCase(Locale.ENGLISH);
        String celsius = words.celsius(main.temperature().nowCelsius());
        switch (main.progress()) {
            case STALLED -> {
                return "Stalled by cold at " + celsius + " in the " + place + ", " + done
                        + " done. Nothing is lost: it goes on when it stands warmer.";
            }
            case TOO_HOT -> {
                return "Too hot for the yeast at " + celsius + " in the " + place + ", " + done
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
        if (ready.early().isPresent() && ready.late().isPresent()) {
            return about + " (" + words.day(ready.early().get()) + " to "
                    + words.day(ready.late().get()) + ")";
        }
        return about + ready.early().map(day -> ", at best " + words.day(day)).orElse("");
    }

    private String ready(LotOutlook main) {
        return "Ready"
                + main.ready().median().map(day -> " since " + words.day(day)).orElse("") + ". ";
    }

    private String stock(LotOutlook main, int left) {
        double heat = main.pressure().heatLimitCelsius();
        String place = main.place().name().toLowerCase(Locale.ENGLISH);
        String safe = Double.isInfinite(heat)
                ? ", safe in any room"
                : heat < 0 ? "" : ", safe in the " + place + " up to " + words.celsius(Math.floor(heat));
        return Wording.bottles(left) + " left" + safe + ".";
    }

    /** All lots emptied, whichever they were. */
    static boolean isEmpty(List<Lot> lots, Instant at) {
        return lots.stream().allMatch(lot -> lot.leftAt(at) == 0);
    }
}
