package undercroft.outlook;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.calc.conditioning.ReadingsVerdict.Agreement;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.Yeast;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.CarbonationOutlook;
import undercroft.outlook.lot.LightOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.lot.ReadyOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.outlook.lot.TemperatureOutlook;
import undercroft.quantity.Interval;

/** Makes an invented batch and its outlook. */
final class SampleBatch {
    private final Instant now;
    private final String id;
    private final String name;
    private final double ageDays;
    private final Instant capped;
    private final List<Lot> lots = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private double endVolumes = 2.4;
    private double endBar = 2.1;
    private double tauDays = 7;
    private double celsius = 18;
    private double lightPerDay;
    private double heatLimit = 31;
    private String lightWords = "kept dark";
    private Stage stage = Stage.READY;
    private Alert pressureAlert = Alert.CLEAR;
    private Alert lightAlert = Alert.CLEAR;
    private LotOutlook.Progress progress = LotOutlook.Progress.DONE;
    private String headline = "";

    SampleBatch(Instant now, String id, String name, double ageDays) {
        this.now = now;
        this.id = id;
        this.name = name;
        this.ageDays = Math.max(
                0.1, ageDays + Duration.between(OutlookSamples.NOW, now).toHours() / 24.0);
        this.capped = OutlookSamples.NOW.minus(Duration.ofMinutes(Math.round(ageDays * 24 * 60)));
    }

    Instant capped() {
        return capped;
    }

    SampleBatch lot(String place, String bottle, GlassColour colour, int count, int drawn) {
        List<Draw> draws = new ArrayList<>();
        for (int i = 0; i < drawn; i += 4) {
            Instant at = capped().plus(Duration.ofHours(Math.round(
                    Duration.between(capped, OutlookSamples.NOW).toHours() * (0.5 + 0.45 * i / Math.max(1, drawn)))));
            draws.add(new Draw(at, Math.min(4, drawn - i), Draw.Fate.OPENED, i == 0 ? "first taste" : ""));
        }
        String lotId = "lot-" + (lots.size() + 1);
        double fill = Double.parseDouble(bottle.substring(bottle.indexOf('-') + 1));
        lots.add(new Lot(lotId, bottle, colour, count, fill, false, stays(place), draws));
        return this;
    }

    private List<Stay> stays(String place) {
        return List.of(new Stay(place, capped(), Cover.OPEN_CRATE));
    }

    SampleBatch carbonation(double volumes, double bar, double tau) {
        endVolumes = volumes;
        endBar = bar;
        tauDays = tau;
        return this;
    }

    SampleBatch is(Stage newStage, LotOutlook.Progress newProgress, double degrees) {
        stage = newStage;
        progress = newProgress;
        celsius = degrees;
        return this;
    }

    SampleBatch pressureAlert(Alert alert, double heatLimitCelsius) {
        pressureAlert = alert;
        heatLimit = heatLimitCelsius;
        return this;
    }

    SampleBatch light(double perDay, Alert alert, String words) {
        lightPerDay = perDay;
        lightAlert = alert;
        lightWords = words;
        return this;
    }

    SampleBatch says(String sentence) {
        headline = sentence;
        return this;
    }

    SampleBatch read(Reading reading) {
        readings.add(reading);
        return this;
    }

    Batch batch() {
        return new Batch(
                id,
                name,
                new Beer(BeerStyle.PALE_ALE, 5.2, 30, 0, 20, 20, OptionalDouble.empty(), OptionalDouble.empty()),
                new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false),
                new Priming(19, List.of(new SugarDose("sucrose", 110)), OptionalDouble.of(2.4), false),
                FillingMethod.CAREFUL,
                stage == Stage.FILLING ? Optional.empty() : Optional.of(capped()),
                lots,
                readings,
                "Dry and a little smoky.");
    }

    BatchOutlook outlook(Cellar cellar) {
        Batch batch = cellar.batch(id);
        List<LotOutlook> outlooks = stage == Stage.FILLING
                ? List.of()
                : batch.lots().stream().map(lot -> lotOutlook(cellar, lot)).toList();
        Alert alert = outlooks.stream().map(LotOutlook::alert).reduce(Alert.CLEAR, Alert::or);
        if (progress == LotOutlook.Progress.STALLED || stage == Stage.PAST_BEST_BEFORE) {
            alert = alert.or(Alert.WATCH);
        }
        return new BatchOutlook(
                batch, stage, alert, headline, batch.leftAt(now), outlooks, Agreement.NO_READINGS, SampleWhys.ALL);
    }

    private LotOutlook lotOutlook(Cellar cellar, Lot lot) {
        SampleTrajectories trajectories =
                new SampleTrajectories(capped().isBefore(now) ? capped() : now.minusSeconds(3600), now);
        Place place = cellar.place(lot.stayAt(now).placeId());
        double share = SampleTrajectories.share(ageDays, tauDays);
        double volumes = 0.9 + (endVolumes - 0.9) * share;
        BottleType bottle = cellar.bottleType(lot.bottleTypeId());
        double spread = 0.18 * share + 0.02;
        Interval bar = Interval.of(endBar * share * 0.93, endBar * share, endBar * share * 1.08);
        boolean ready = share > 0.9;
        return new LotOutlook(
                lot,
                lot.leftAt(now),
                place,
                new CarbonationOutlook(
                        Interval.of(volumes - spread, volumes, volumes + spread),
                        Interval.of(endVolumes - 0.2, endVolumes, endVolumes + 0.2),
                        Interval.of(Math.max(0, share - 0.1), share, Math.min(1, share + 0.1)),
                        trajectories.carbonation(0.9, endVolumes, tauDays, 0.2)),
                new PressureOutlook(
                        bar,
                        bar.times(1.1),
                        Interval.of(endBar, endBar * 1.1, endBar * 1.25),
                        bar.times(1.06),
                        bar.times(0.8),
                        bottle.bottleClass().workingPressureBar(),
                        bottle.bottleClass().cautionBar(),
                        heatLimit,
                        bottle,
                        pressureAlert,
                        trajectories.pressure(endBar, tauDays, celsius)),
                new LightOutlook(
                        Interval.exactly(lightPerDay * ageDays),
                        lightPerDay,
                        lightAlert,
                        lightWords,
                        trajectories.light(lightPerDay)),
                ageing(),
                new TemperatureOutlook(
                        celsius,
                        celsius + 0.8,
                        celsius + 6,
                        0.93,
                        trajectories.air(celsius),
                        trajectories.bottles(celsius),
                        trajectories.gaps()),
                new ReadyOutlook(
                        Optional.of(trajectories.instant(tauDays * 1.6 + 4)),
                        Optional.of(trajectories.instant(tauDays * 1.9 + 5)),
                        Optional.of(trajectories.instant(tauDays * 2.4 + 6)),
                        ready ? 1 : 0),
                progress);
    }

    private AgeingOutlook ageing() {
        LocalDate until = LocalDate.ofInstant(now, ZoneOffset.UTC).plusDays(Math.round(150 - ageDays));
        return new AgeingOutlook(
                Interval.of(ageDays * 0.7, ageDays * 0.85, ageDays),
                Interval.of(120, 150, 180),
                Optional.of(until.minusDays(30)),
                Optional.of(until),
                Optional.of(until.plusDays(30)));
    }
}
