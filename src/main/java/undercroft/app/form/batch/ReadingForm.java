package undercroft.app.form.batch;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.WordsField;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.session.change.NoteReading;
import undercroft.wording.Messages;

/** Something found out about a batch: a gauge, a squeeze, an opened bottle, a gravity. */
public final class ReadingForm extends Form {
    /** What was done. */
    public enum Kind {
        GAUGE("gauge"),
        SQUEEZE("squeeze"),
        OPENED("opened"),
        GRAVITY("gravity");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        String words(Messages messages) {
            return messages.of("form.reading.kind." + key);
        }
    }

    private final Batch batch;
    private final ChoiceField<Kind> kind;
    private final ChoiceField<Lot> lot;
    private final WordsField gauge;
    private final NumberField pressure;
    private final ChoiceField<BottleFeel> feel;
    private final ChoiceField<PerceivedCarbonation> perceivedCarbonation;
    private final NumberField gravity;
    private final DateTimeField at;

    public ReadingForm(Messages messages, Cellar cellar, Batch batch, Lot chosen, Instant now) {
        super(messages, cellar);
        this.batch = batch;
        kind = add(new ChoiceField<>(
                messages(),
                "reading-kind",
                words("kind"),
                List.of(Kind.values()),
                each -> each.words(messages),
                Kind.GAUGE));
        lot = add(
                new ChoiceField<>(
                        messages(), "reading-lot", words("lot"), batch.lots(), each -> lotWords(each), chosen),
                "lot");
        gauge = add(
                new WordsField(messages(), "reading-gauge", words("gauge"), usualGauge(messages, batch, chosen))
                        .required(),
                "gauge");
        pressure = add(
                new NumberField(messages(), "reading-pressure", words("pressure"), Measure.PRESSURE, units(), -0.5, 16),
                "gaugeBar");
        feel = add(ChoiceField.of(messages(), "reading-feel", words("feel"), BottleFeel.class, BottleFeel.FIRM));
        perceivedCarbonation = add(ChoiceField.of(
                messages(),
                "reading-liveliness",
                words("liveliness"),
                PerceivedCarbonation.class,
                PerceivedCarbonation.SOFT));
        gravity = add(
                new NumberField(
                        messages(), "reading-gravity", words("gravity"), Measure.GRAVITY, units(), 0.980, 1.200),
                "specificGravity");
        at = add(
                new DateTimeField(
                                messages(),
                                "reading-at",
                                words("at"),
                                cellar.zone(),
                                now.truncatedTo(ChronoUnit.MINUTES))
                        .happened(batch.cappedAt().orElse(chosen.stays().get(0).from()), now),
                "at");
        lot.askWhen(kind.chosenProperty().isNotEqualTo(Kind.GRAVITY));
        gauge.askWhen(kind.chosenProperty().isEqualTo(Kind.GAUGE));
        pressure.askWhen(kind.chosenProperty().isEqualTo(Kind.GAUGE));
        feel.askWhen(kind.chosenProperty().isEqualTo(Kind.SQUEEZE));
        perceivedCarbonation.askWhen(kind.chosenProperty().isEqualTo(Kind.OPENED));
        gravity.askWhen(kind.chosenProperty().isEqualTo(Kind.GRAVITY));
        gauge.hintProperty().set(words("gauge-hint"));
        gravity.hintProperty().set(words("gravity-hint"));
        begin();
    }

    private String words(String key) {
        return messages().of("form.reading." + key);
    }

    /** The gauge of an experiment that goes on, or the one read last: most people have one. */
    static String usualGauge(Messages messages, Batch batch, Lot lot) {
        Optional<String> fitted =
                lot.gauge().filter(gauge -> gauge.opened().isEmpty()).map(FittedGauge::instrument);
        if (fitted.isPresent()) {
            return fitted.get();
        }
        String last = messages.of("form.reading.usual-gauge");
        for (Reading reading : batch.readings()) {
            if (reading instanceof Reading.Gauge read) {
                last = read.gauge();
            }
        }
        return last;
    }

    /** Bottles, make and glass: tells the lots of a batch apart. */
    private String lotWords(Lot lot) {
        return lot == null
                ? ""
                : messages()
                        .of(
                                "form.lot.words",
                                lot.left(),
                                cellar().bottleType(lot.bottleTypeId()),
                                lot.colour(),
                                cellar().place(lot.stays()
                                                .get(lot.stays().size() - 1)
                                                .placeId())
                                        .name());
    }

    static Optional<String> lotOf(Reading reading) {
        if (reading instanceof Reading.Gauge read) {
            return Optional.of(read.lotId());
        }
        if (reading instanceof Reading.Squeeze squeeze) {
            return Optional.of(squeeze.lotId());
        }
        return reading instanceof Reading.Opened opened ? Optional.of(opened.lotId()) : Optional.empty();
    }

    public List<Field<?>> fields() {
        return List.of(kind, lot, gauge, pressure, feel, perceivedCarbonation, gravity, at);
    }

    @Override
    public String what() {
        return messages().of("undo.reading.added", batch.name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        return new NoteReading(batch.id(), reading()).applyTo(current);
    }

    private Reading reading() {
        Instant when = at.value();
        String lotId = lot.value().id();
        return switch (kind.value()) {
            case GAUGE -> new Reading.Gauge(when, lotId, gauge.value(), pressure.figure());
            case SQUEEZE -> new Reading.Squeeze(when, lotId, feel.value());
            case OPENED -> new Reading.Opened(when, lotId, perceivedCarbonation.value());
            case GRAVITY -> new Reading.Density(when, gravity.figure());
        };
    }
}
