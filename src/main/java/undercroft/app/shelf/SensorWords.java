package undercroft.app.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.cellar.Cellar;
import undercroft.listen.SensorState;
import undercroft.quantity.InvalidInput;
import undercroft.session.Sensors;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/**
 * How it stands with a place's live sensor.
 *
 * @param sign a few words beside the place's name
 * @param sentences all there is to say
 * @param wantsLooking whether something is wrong
 */
public record SensorWords(String sign, List<String> sentences, boolean wantsLooking) {
    public SensorWords {
        sentences = List.copyOf(sentences);
    }

    /** Empty for a place without a live sensor. */
    public static Optional<SensorWords> of(Sensors.State state, Cellar cellar, String placeId, Messages messages) {
        boolean live = cellar.places().stream()
                .anyMatch(place -> place.id().equals(placeId) && place.topic().isPresent());
        if (!live) {
            return Optional.empty();
        }
        if (!state.brokerNamed()) {
            return Optional.of(wanting(messages, "listen.state.unnamed", List.of("listen.state.unnamed-sentence")));
        }
        if (state.brokerFault().isPresent()) {
            String why = messages.sentence(messages.what(state.brokerFault().get()));
            return Optional.of(new SensorWords(messages.of("listen.state.away"), List.of(why), true));
        }
        SensorState sensor = state.places().get(placeId);
        QuantityFormat format = QuantityFormat.of(messages, cellar.settings().units(), cellar.zone());
        return Optional.of(sensor == null ? waiting(messages) : heard(sensor, messages, format));
    }

    private static SensorWords wanting(Messages messages, String sign, List<String> sentences) {
        return new SensorWords(
                messages.of(sign), sentences.stream().map(messages::of).toList(), true);
    }

    private static SensorWords waiting(Messages messages) {
        return new SensorWords(messages.of("listen.state.never"), List.of(), false);
    }

    private static SensorWords heard(SensorState sensor, Messages messages, QuantityFormat format) {
        List<String> sentences = new ArrayList<>();
        sensor.heard().ifPresent(at -> sentences.add(messages.of("listen.state.last", format.dayAndTime(at))));
        sentences.add(messages.of("listen.state.counts", sensor.taken(), sensor.leftOut()));
        for (InvalidInput fault : sensor.faults()) {
            sentences.add(messages.sentence(messages.what(fault)));
        }
        boolean silent = sensor.faults().stream().anyMatch(fault -> fault.key().equals("listen.fault.silent"));
        String sign = sensor.heard()
                .map(at -> messages.of(silent ? "listen.state.silent" : "listen.state.heard", format.clock(at)))
                .orElseGet(() -> messages.of("listen.state.never"));
        boolean leftOut =
                sensor.faults().stream().anyMatch(fault -> !fault.key().equals("listen.fault.silent"));
        return new SensorWords(
                leftOut ? messages.of("listen.state.and-left-out", sign, sensor.leftOut()) : sign,
                sentences,
                silent || leftOut);
    }
}
