package undercroft.wording;

import java.time.Instant;
import java.util.Optional;
import undercroft.calc.light.LightBand;
import undercroft.cellar.Batch;
import undercroft.cellar.Draw;
import undercroft.cellar.SugarDose;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.CauseFigure;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.ReadyOutlook;
import undercroft.outlook.lot.Stage;

/** The one sentence a person would say of a batch. */
public record Headlines(ShelfWords words) {
    /** What is grave if anything is, else how far it has come. */
    public String of(BatchOutlook batch) {
        return switch (batch.stage()) {
            case FILLING -> notCappedYet(batch.batch());
            case EMPTY -> words.of("headline.gone", words.day(lastDraw(batch.batch())));
            default ->
                batch.verdict()
                        .leading()
                        .filter(cause -> cause.alert() == Alert.ACT)
                        .map(cause -> grave(batch, cause))
                        .orElseGet(() -> ordinary(batch));
        };
    }

    /** A plan, or a batch seen as of a day before it was bottled. */
    private String notCappedYet(Batch batch) {
        return batch.cappedAt()
                .map(capped -> words.of("headline.not-yet", words.day(capped)))
                .orElseGet(() -> planned(batch));
    }

    private String planned(Batch batch) {
        String beer = words.format().litres(batch.priming().beerLitres());
        double grams =
                batch.priming().doses().stream().mapToDouble(SugarDose::grams).sum();
        return grams > 0
                ? words.of("headline.planned-sugar", beer, words.format().grams(grams))
                : words.of("headline.planned", beer);
    }

    private Instant lastDraw(Batch batch) {
        return batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .map(Draw::at)
                .filter(drawn -> !drawn.isAfter(words.at()))
                .max(Instant::compareTo)
                .orElse(words.at());
    }

    private String grave(BatchOutlook batch, Cause cause) {
        String lead = lead(batch, cause);
        return words.of("headline.found", lead, firstThing(batch, cause));
    }

    private String lead(BatchOutlook batch, Cause cause) {
        return switch (cause.kind()) {
            case BURST -> burst(batch, cause);
            case STRONGEST_OVER_WORKING_PRESSURE ->
                ofLot(batch, cause, CauseFigure.STRONGEST_GAUGE_BAR, "headline.over", "headline.over-lot");
            case PEAK_AHEAD_OVER_WORKING_PRESSURE ->
                ofLot(batch, cause, CauseFigure.PEAK_AHEAD_GAUGE_BAR, "headline.ahead", "headline.ahead-lot");
            case OVER_IN_WARMEST_WEEK -> new PressureWords(words).inWarmestWeek("headline.summer", batch, cause);
            case PEAK_PAST_OVER_WORKING_PRESSURE -> past(cause);
            case FROZEN, WAS_FROZEN -> frost(cause);
            case GLASS_WORN ->
                ofLot(batch, cause, CauseFigure.PEAK_PAST_GAUGE_BAR, "headline.worn", "headline.worn-lot");
            case READINGS_ABOVE_SUGAR -> words.of("headline.above-sugar");
            case LIGHTSTRUCK_SOON -> words.of("headline.light-soon");
            default -> throw new IllegalArgumentException(cause.kind() + " is not grave");
        };
    }

    /** A burst comes first, and beside it what is left to burst. */
    private String burst(BatchOutlook batch, Cause burst) {
        int bottles = (int) burst.figure(CauseFigure.BOTTLES);
        String day = words.day(burst.since().orElseThrow());
        Optional<Cause> over = batch.verdict().causes().stream()
                .filter(cause -> cause.kind() == Cause.Kind.STRONGEST_OVER_WORKING_PRESSURE)
                .findFirst();
        return over.map(cause -> words.of(
                        "headline.burst-over",
                        bottles,
                        day,
                        words.format().barWorst(cause.figure(CauseFigure.STRONGEST_GAUGE_BAR)),
                        working(cause)))
                .orElseGet(() -> words.of("headline.burst", bottles, day));
    }

    private String past(Cause cause) {
        return words.of(
                "headline.past-peak",
                words.format().barWorst(cause.figure(CauseFigure.PEAK_PAST_GAUGE_BAR)),
                words.day(cause.since().orElseThrow()),
                working(cause));
    }

    private String frost(Cause cause) {
        return words.of(
                cause.kind() == Cause.Kind.FROZEN ? "headline.frozen" : "headline.was-frozen",
                words.format().celsius(cause.figure(CauseFigure.COLDEST_CELSIUS)),
                words.format().celsius(cause.figure(CauseFigure.FREEZING_CELSIUS)));
    }

    /** Which lot, where there are several. */
    private String ofLot(BatchOutlook batch, Cause cause, CauseFigure figure, String key, String ofLot) {
        String pressure = words.format().barWorst(cause.figure(figure));
        if (batch.lots().size() == 1) {
            return words.of(key, pressure, working(cause));
        }
        LotOutlook lot = lot(batch, cause);
        return words.of(
                ofLot,
                pressure,
                working(cause),
                words.format().bottles(lot.left()),
                lot.place().name());
    }

    private String working(Cause cause) {
        return words.format().barLimit(cause.figure(CauseFigure.WORKING_PRESSURE_GAUGE_BAR));
    }

    private String firstThing(BatchOutlook batch, Cause cause) {
        return cause.kind() == Cause.Kind.LIGHTSTRUCK_SOON
                ? words.of("headline.do.cover")
                : new HandlingWords(words).first(lot(batch, cause));
    }

    private static LotOutlook lot(BatchOutlook batch, Cause cause) {
        return cause.lotId().map(batch::lot).orElseGet(batch::mainLot);
    }

    private String ordinary(BatchOutlook batch) {
        LotOutlook main = batch.mainLot();
        Optional<Cause> stuck = main.verdict()
                .leading(Cause.Topic.YEAST)
                .filter(cause -> main.stuck().isStuck());
        if (stuck.isPresent()) {
            return words.of("headline.stuck", new StuckWords(words).sentence(batch, stuck.get()), stock(batch));
        }
        Stage stage = batch.stage();
        if (stage == Stage.CARBONATING) {
            return carbonating(batch, main);
        }
        String stock = stock(batch);
        if (stage == Stage.CLEARING) {
            return words.of("headline.clearing", readyWhen(main.ready()), stock);
        }
        if (stage == Stage.PAST_BEST_BEFORE) {
            return main.ageing()
                    .bestBefore()
                    .map(day -> words.of("headline.past-since", stock, words.day(day)))
                    .orElseGet(() -> words.of("headline.past", stock));
        }
        Optional<String> since = main.ready().median().map(words::day);
        if (main.light().band().compareTo(LightBand.LIKELY) < 0) {
            return since.map(day -> words.of("headline.ready-since", stock, day))
                    .orElseGet(() -> words.of("headline.ready", stock));
        }
        String light = words.name(main.light().band());
        return words.of(
                since.isPresent() ? "headline.ready-since-but" : "headline.ready-but", stock, since.orElse(""), light);
    }

    private String carbonating(BatchOutlook batch, LotOutlook main) {
        String done = words.format().percent(main.carbonation().fractionDone().median());
        String celsius = words.format().wholeCelsius(main.temperature().nowCelsius());
        String place = main.place().name();
        String since = words.day(batch.batch().cappedAt().orElseThrow());
        return switch (main.progress()) {
            case STALLED -> words.of("headline.stalled", celsius, place, done);
            case TOO_HOT -> words.of("headline.too-hot", celsius, place, done);
            case SLOW -> words.of("headline.carbonating-slowly", since, done, readyWhen(main.ready()));
            case WORKING, DONE -> words.of("headline.carbonating", since, done, readyWhen(main.ready()));
        };
    }

    private String readyWhen(ReadyOutlook ready) {
        if (ready.median().isEmpty()) {
            return words.of("headline.when.never");
        }
        String about = words.day(ready.median().get());
        if (ready.early().isEmpty()) {
            return words.of("headline.when.about", about);
        }
        return words.of(
                "headline.when.between",
                about,
                ready.early().get().isAfter(words.at())
                        ? words.day(ready.early().get())
                        : words.of("headline.when.now"),
                ready.late().map(words::day).orElseGet(() -> words.of("headline.when.later")));
    }

    private String stock(BatchOutlook batch) {
        int left = batch.bottlesLeft();
        double heat = batch.heatLimitLot().pressure().heatLimitCelsius();
        if (heat < 0) {
            return words.of("headline.stock", left);
        }
        return words.of(
                Double.isInfinite(heat) ? "headline.stock-beyond" : "headline.stock-limit",
                left,
                words.format().heatLimit(heat));
    }
}
