package undercroft.outlook.lot;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import undercroft.calc.ageing.MeanKineticTemperature;
import undercroft.calc.chill.Frost;
import undercroft.calc.conditioning.ConditioningEnsemble;
import undercroft.calc.conditioning.ConditioningRun;
import undercroft.calc.conditioning.ConditioningSigns;
import undercroft.calc.conditioning.PressureForecast;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.LimitTemperatures;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.gas.PressureTable;
import undercroft.calc.priming.Dosing;
import undercroft.calc.spell.FrostExposure;
import undercroft.calc.spell.WarmestWeek;
import undercroft.catalogue.BottleType;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.outlook.climate.LotClimate;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.series.Band;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

/** From a lot, its batch's ensemble and its climate to its outlook. */
final class LotCalculator {
    private static final long DAY = 86_400;
    private static final long CLOSELY_AHEAD = 30 * DAY;
    private static final long CHANCE_AHEAD = 360 * DAY;

    private final Batch batch;
    private final Lot lot;
    private final Instant at;
    private final LotClimate climate;
    private final BottleType type;
    private final Cellar cellar;
    private final Map<String, PlaceClimate> places;

    LotCalculator(
            Cellar cellar, Batch batch, Lot lot, Instant at, LotClimate climate, Map<String, PlaceClimate> places) {
        this.places = places;
        this.cellar = cellar;
        this.batch = batch;
        this.lot = lot;
        this.at = at;
        this.climate = climate;
        this.type = bottleAsUsed(cellar.bottleType(lot.bottleTypeId()), lot);
    }

    /** The make with the lot's own colour, fill and wear. */
    static BottleType bottleAsUsed(BottleType type, Lot lot) {
        return type.asUsed(lot.colour(), lot.fillMillilitres(), lot.scuffed());
    }

    String lotId() {
        return lot.id();
    }

    /** The lot's course as possible beers take it. */
    ConditioningRun follow(ConditioningEnsemble beers) {
        return beers.run(climate.bottles(), capped(), moments().instants());
    }

    private long capped() {
        return batch.cappedAt().orElseThrow().getEpochSecond();
    }

    private TimeGrid moments() {
        Track bottles = climate.bottles();
        return TimeGrid.of(capped(), at.getEpochSecond(), bottles.timeAt(bottles.size() - 1));
    }

    /** {@code byItself} is the course that {@link #follow} gave for the beers of this batch alone. */
    LotOutlook outlook(
            BatchChemistry chemistry,
            Beliefs beliefs,
            ConditioningRun byItself,
            ClosedBottle bottle,
            Evidence evidence) {
        long capped = capped();
        Track bottles = climate.bottles();
        TimeGrid moments = moments();
        ConditioningRun run = beliefs.taught().map(this::follow).orElse(byItself);
        Optional<ConditioningRun> alone = beliefs.taught().map(taught -> byItself);
        CarbonationOutlook carbonation = new CarbonationOutlook(
                chemistry.refermentation().residualGramsPerLitre().times(1 / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME),
                run.carbonationVolumesAt(moments.present()),
                run.finalCarbonationVolumes(),
                run.fractionDoneAt(moments.present()),
                run.carbonationVolumes());
        Interval ready = run.readyEpochSeconds();
        StuckOutlook stuck = new StuckCalculator(
                        batch,
                        lot,
                        at,
                        bottles,
                        bottle,
                        chemistry.refermentation().beerFactor().median())
                .of(carbonation);
        ReadyOutlook readyOutlook = stuck.isStuck()
                ? ReadyOutlook.never(at)
                : new ReadyOutlook(
                        instant(ready.low()),
                        instant(ready.median()),
                        instant(ready.high()),
                        run.probabilityReadyBy(at.getEpochSecond()),
                        alone.map(ConditioningRun::readyEpochSeconds),
                        chance(run));
        int left = lot.leftAt(at);
        PressureForecast known = forecast(chemistry, beliefs.clock(), run, bottle);
        PressureForecast forecast = alone.filter(each -> beliefs.holdsTheWorse())
                .map(each -> known.orWorse(forecast(chemistry, beliefs.alone(), each, bottle)))
                .orElse(known);
        Dosing dosing = batch.priming().perBottle() ? Dosing.SPOON : Dosing.SYRUP;
        double strongest = dosing.strongestOf(Math.max(1, left));
        PressureOutlook pressure = pressure(forecast, moments, strongest, evidence);
        LightOutlook light = LightCalculator.of(cellar, batch, lot, type, at);
        AgeingOutlook ageing = AgeingCalculator.of(batch, bottles, at, cellar.zone());
        return new LotOutlook(
                lot,
                at,
                left,
                cellar.place(lot.stayAt(at).placeId()),
                carbonation,
                pressure,
                light,
                ageing,
                temperature(capped, moments),
                readyOutlook,
                progress(bottles, capped, carbonation),
                frost(chemistry, capped),
                stuck,
                evidence,
                new SpellExposures(lot, bottles, places, at)
                        .of(new SpellExposures.Pressures(
                                forecast,
                                strongest,
                                pressure.strongestTrajectory(),
                                pressure.workingPressureBar(),
                                bottle,
                                chemistry.refermentation().beerFactor().median(),
                                carbonation.atPresent())));
    }

    /** Every six hours for a month, then daily for as long as the median course is told. */
    private TimeSeries chance(ConditioningRun run) {
        TimeSeries.Builder chance = new TimeSeries.Builder();
        long now = at.getEpochSecond();
        Track bottles = climate.bottles();
        long until = Math.min(CHANCE_AHEAD, bottles.timeAt(bottles.size() - 1) - now);
        for (long ahead = 0; ahead <= until; ahead += ahead < CLOSELY_AHEAD ? DAY / 4 : DAY) {
            chance.add(now + ahead, run.probabilityReadyBy(now + ahead));
        }
        return chance.build();
    }

    private static PressureForecast forecast(
            BatchChemistry chemistry, ConditioningEnsemble ensemble, ConditioningRun run, ClosedBottle bottle) {
        double most = Math.min(
                ClosedBottle.MOST_GRAMS_PER_LITRE,
                1.4 * run.finalCarbonationVolumes().high() * Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME);
        PressureTable table = PressureTable.of(
                bottle,
                Math.max(4, most),
                chemistry.refermentation().beerFactor().median());
        return PressureForecast.of(ensemble, run, table);
    }

    private PressureOutlook pressure(PressureForecast forecast, TimeGrid moments, double strongest, Evidence evidence) {
        Track bottles = climate.bottles();
        int present = moments.present();
        int here = bottles.indexAt(at.getEpochSecond());
        double now = bottles.valueAt(here);
        double spread = bottles.spreadAt(here);
        PressureLimits limits = PressureLimits.of(type);
        double working = limits.workingPressureBar();
        Band trajectory = forecast.trajectory(bottles, strongest);
        LimitTemperatures limitTemperatures = forecast.limitTemperatures(strongest, limits);
        long until = at.plus(PressureOutlook.AHEAD).getEpochSecond();
        int aheadUntil = Math.max(present, trajectory.indexAtOrBefore(until)) + 1;
        WarmestWeek year = places.get(lot.stayAt(at).placeId()).warmestWeekBefore(at);
        PassingChances chances =
                new PassingChances(forecast, strongest, trajectory, bottles, limitTemperatures, working);
        return new PressureOutlook(
                forecast.at(present, now, spread),
                chances.past(present, evidence),
                peak(trajectory, present, aheadUntil),
                passes(trajectory, present, aheadUntil, working),
                forecast.strongestAt(present, now, spread, strongest),
                PressureForecast.memory(trajectory, present + 1),
                working,
                limits.cautionBar(),
                chances.ahead(present, aheadUntil, here, until, year),
                limitTemperatures,
                type,
                forecast.trajectory(bottles, 1),
                trajectory);
    }

    private static Optional<Instant> passes(Band trajectory, int fromInclusive, int untilExclusive, double bar) {
        for (int i = fromInclusive; i < untilExclusive; i++) {
            if (trajectory.highAt(i) > bar) {
                return Optional.of(Instant.ofEpochSecond(trajectory.timeAt(i)));
            }
        }
        return Optional.empty();
    }

    private FrostOutlook frost(BatchChemistry chemistry, long capped) {
        Frost limits = Frost.of(type, batch.beer().abvPercent(), chemistry.realExtractGramsPerLitre());
        long until = Math.max(capped, at.getEpochSecond());
        return new FrostOutlook(limits, FrostExposure.of(limits, climate.bottles(), capped, until));
    }

    private LotOutlook.Progress progress(Track bottles, long capped, CarbonationOutlook carbonation) {
        double done = carbonation.fractionDone().median();
        ConditioningSigns signs =
                ConditioningSigns.at(batch.yeast().strain(), bottles, capped, at.getEpochSecond(), done);
        if (carbonation.isDone()) {
            return LotOutlook.Progress.DONE;
        }
        boolean hotNow = bottles.valueAt(bottles.indexAt(at.getEpochSecond()))
                > batch.yeast().strain().tooHotCelsius();
        if (signs.tooHot() && hotNow) {
            return LotOutlook.Progress.TOO_HOT;
        }
        if (signs.stalled()) {
            return LotOutlook.Progress.STALLED;
        }
        return signs.slow() ? LotOutlook.Progress.SLOW : LotOutlook.Progress.WORKING;
    }

    private TemperatureOutlook temperature(long capped, TimeGrid moments) {
        Track bottles = climate.bottles();
        long until = Math.max(at.getEpochSecond(), capped + 3600);
        double warmest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= bottles.indexAt(at.getEpochSecond()); i++) {
            warmest = Math.max(warmest, bottles.valueAt(i));
        }
        return new TemperatureOutlook(
                bottles.valueAt(bottles.indexAt(at.getEpochSecond())),
                MeanKineticTemperature.of(bottles, capped, until),
                warmest,
                climate.coverage(),
                climate.air(),
                moments.temperatureBand(bottles),
                climate.gaps());
    }

    static Interval peak(Band trajectory, int fromInclusive, int untilExclusive) {
        double low = Double.NEGATIVE_INFINITY;
        double median = Double.NEGATIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = fromInclusive; i < untilExclusive; i++) {
            low = Math.max(low, trajectory.lowAt(i));
            median = Math.max(median, trajectory.medianAt(i));
            high = Math.max(high, trajectory.highAt(i));
        }
        return Interval.of(low, median, high);
    }

    private static Optional<Instant> instant(double epochSecond) {
        return Double.isInfinite(epochSecond)
                ? Optional.empty()
                : Optional.of(Instant.ofEpochSecond(Math.round(epochSecond)));
    }
}
