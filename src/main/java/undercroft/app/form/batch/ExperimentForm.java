package undercroft.app.form.batch;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.BooleanBinding;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.WordsField;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.Origin;
import undercroft.cellar.PressureTopic;
import undercroft.cellar.PressureUnit;
import undercroft.cellar.Reading;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** The two ends of a gauge experiment: a gauge is fitted to a bottle; weeks later that bottle is opened and tasted. */
public final class ExperimentForm extends Form {
    private final Batch batch;
    private final Lot lot;
    private final Optional<FittedGauge> running;
    private final WordsField gauge;
    private final ChoiceField<PerceivedCarbonation> taste;
    private final DateTimeField at;
    private final WordsField topic;
    private final WordsField pointer;
    private final ChoiceField<PressureUnit> unit;

    /** Ends the experiment that goes on with the lot, or begins one. */
    public ExperimentForm(Messages messages, Cellar cellar, Batch batch, Lot lot, Instant now) {
        super(messages, cellar);
        this.batch = batch;
        this.lot = lot;
        running = lot.gauge().filter(fitted -> fitted.isReadAt(now));
        Instant capped = lot.stays().get(0).from();
        gauge = add(
                new WordsField(
                                messages(),
                                "experiment-gauge",
                                words("gauge"),
                                ReadingForm.usualGauge(messages(), batch, lot))
                        .required(),
                "gauge.instrument");
        gauge.hintProperty().set(words("gauge-hint"));
        taste = add(ChoiceField.of(
                messages(),
                "experiment-taste",
                messages().of("form.reading.liveliness"),
                PerceivedCarbonation.class,
                PerceivedCarbonation.SOFT));
        at = add(
                new DateTimeField(
                                messages(),
                                "experiment-at",
                                words(running.isPresent() ? "opened" : "from"),
                                cellar.zone(),
                                running.isPresent() ? now.truncatedTo(ChronoUnit.MINUTES) : capped)
                        .happened(running.map(FittedGauge::from).orElse(capped), now),
                "at",
                "gauge.from",
                "opened");
        topic = add(new WordsField(messages(), "experiment-topic", words("topic"), ""), "topic.name");
        topic.hintProperty().set(words("topic-hint"));
        pointer = add(
                new WordsField(messages(), "experiment-pointer", messages().of("form.place.pointer"), ""),
                "topic.pointer");
        pointer.hintProperty().set(messages().of("form.place.pointer-hint"));
        unit = add(ChoiceField.of(
                messages(),
                "experiment-unit",
                messages().of("form.place.topic-unit"),
                PressureUnit.class,
                PressureUnit.BAR));
        gauge.asked(running.isEmpty());
        topic.asked(running.isEmpty());
        BooleanBinding heard = topic.textProperty().isNotEmpty().and(topic.askedProperty());
        pointer.askWhen(heard);
        unit.askWhen(heard);
        taste.asked(running.isPresent());
        begin();
    }

    private String words(String key) {
        return messages().of("form.experiment." + key);
    }

    /** Whether it ends one. */
    public boolean ends() {
        return running.isPresent();
    }

    public List<Field<?>> fields() {
        return List.of(gauge, taste, at, topic, pointer, unit);
    }

    /** A gauge that sends what it shows; empty for one that is read by eye. */
    private Optional<PressureTopic> heard() {
        if (topic.value().isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new PressureTopic(topic.value(), pointer.value(), unit.value()));
        } catch (InvalidInput fault) {
            throw fault.at("topic." + fault.where());
        }
    }

    @Override
    public String what() {
        return messages().of(ends() ? "undo.experiment.ended" : "undo.experiment.begun", batch.name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        Batch changed = current.batch(batch.id());
        Lot bottles = changed.lot(lot.id());
        if (running.isEmpty()) {
            FittedGauge fitted = new FittedGauge(gauge.value(), at.value()).hearing(heard());
            return current.withBatch(changed.withLot(bottles.withGauge(fitted)));
        }
        FittedGauge opened = running.get().opened(at.value());
        List<Reading> readings = new ArrayList<>(changed.readings());
        readings.add(new Reading.Opened(at.value(), lot.id(), taste.value(), new Origin(opened.instrument(), "", "")));
        Draw drunk = new Draw(at.value(), 1, Draw.Fate.OPENED, words("draw"));
        return current.withBatch(
                changed.withLot(bottles.withDraw(drunk).withGauge(opened)).withReadings(readings));
    }
}
