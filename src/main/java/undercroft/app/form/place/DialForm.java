package undercroft.app.form.place;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.calc.spell.DialDay;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

/**
 * A thermometer read by eye: one temperature, or a day's lowest and highest. What was logged stays as it is; a typed reading
 * only fills hours that have none.
 */
public final class DialForm extends Form {
    private static final long STANDS_FOR_SECONDS = 3 * 3600;
    private static final long NEAR_SECONDS = 1800;

    /** What was read. */
    public enum Kind {
        NOW("now"),
        DAY("day");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        String words(Messages messages) {
            return messages.of("form.dial.kind." + key);
        }
    }

    private final Place place;
    private final Instant now;
    private final ChoiceField<Kind> kind;
    private final DateTimeField at;
    private final NumberField celsius;
    private final NumberField low;
    private final NumberField high;

    public DialForm(Messages messages, Cellar cellar, Place place, Instant now) {
        super(messages, cellar);
        this.place = place;
        this.now = now;
        kind = add(new ChoiceField<>(
                messages(),
                "dial-kind",
                messages().of("form.dial.kind"),
                List.of(Kind.values()),
                each -> each.words(messages),
                Kind.NOW));
        at = add(
                new DateTimeField(
                        messages(),
                        "dial-at",
                        messages().of("form.dial.at"),
                        cellar.zone(),
                        now.truncatedTo(ChronoUnit.MINUTES)),
                "at");
        celsius = add(number("celsius"), "celsius");
        low = add(number("low"), "low");
        high = add(number("high"), "high");
        celsius.askWhen(kind.chosenProperty().isEqualTo(Kind.NOW));
        low.askWhen(kind.chosenProperty().isEqualTo(Kind.DAY));
        high.askWhen(kind.chosenProperty().isEqualTo(Kind.DAY));
        celsius.hintProperty().set(messages().of("form.dial.rule-now"));
        high.hintProperty().set(messages().of("form.dial.rule-day"));
        begin();
    }

    private NumberField number(String key) {
        return new NumberField(
                messages(), "dial-" + key, messages().of("form.dial." + key), Measure.TEMPERATURE, units(), -30, 60);
    }

    public List<Field<?>> fields() {
        return List.of(kind, at, celsius, low, high);
    }

    public ChoiceField<Kind> kind() {
        return kind;
    }

    public DateTimeField at() {
        return at;
    }

    public NumberField celsius() {
        return celsius;
    }

    public NumberField low() {
        return low;
    }

    public NumberField high() {
        return high;
    }

    @Override
    public String what() {
        return messages().of("undo.temperatures.read", place.name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        readings();
        return current;
    }

    /** Puts the reading into the place's log; undoable. */
    public void save(Workspace workspace) {
        TimeSeries log = workspace.getState().temperatures().getOrDefault(place.id(), TimeSeries.empty());
        workspace.changeTemperatures(what(), place.id(), filled(log, readings()));
    }

    private TimeSeries readings() {
        if (kind.value() == Kind.DAY) {
            if (low.figure() > high.figure()) {
                throw new InvalidInput("low", "form.dial.low-above");
            }
            LocalDate date = at.value().atZone(cellar().zone()).toLocalDate();
            if (date.isAfter(now.atZone(cellar().zone()).toLocalDate())) {
                throw new InvalidInput("at", "form.dial.ahead");
            }
            return DialDay.hours(date, low.figure(), high.figure(), cellar().zone())
                    .between(Long.MIN_VALUE / 2, now.getEpochSecond() + 1);
        }
        long moment = at.value().getEpochSecond();
        if (moment > now.getEpochSecond()) {
            throw new InvalidInput("at", "form.dial.ahead");
        }
        return new TimeSeries.Builder()
                .add(moment - STANDS_FOR_SECONDS, celsius.figure())
                .add(moment, celsius.figure())
                .build();
    }

    /** A typed sample gives way to one that was logged within half an hour of it; the reading itself always counts. */
    private TimeSeries filled(TimeSeries log, TimeSeries typed) {
        TimeSeries.Builder kept = new TimeSeries.Builder();
        for (int i = 0; i < typed.size(); i++) {
            long time = typed.timeAt(i);
            boolean read = kind.value() == Kind.NOW && i == typed.size() - 1;
            if (read
                    || log.between(time - NEAR_SECONDS, time + NEAR_SECONDS + 1).isEmpty()) {
                kept.add(time, typed.valueAt(i));
            }
        }
        return log.mergedWith(kept.build());
    }
}
