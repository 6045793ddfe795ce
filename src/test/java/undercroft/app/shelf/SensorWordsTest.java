package undercroft.app.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.TemperatureUnit;
import undercroft.listen.SensorState;
import undercroft.quantity.InvalidInput;
import undercroft.session.Sensors;
import undercroft.wording.Messages;

class SensorWordsTest {
    private static final Instant HEARD = Instant.parse("2026-11-25T14:05:00Z");
    private static final Place PLAIN =
            new Place("vault", "Vault", new TemperatureSource.Logged(), 3, LightSetting.usual(LightPlace.DARK));
    private static final Cellar CELLAR = Cellar.empty("Test", ZoneOffset.UTC)
            .withPlace(PLAIN)
            .withPlace(new Place("loft", "Loft", new TemperatureSource.Logged(), 3, LightSetting.usual(LightPlace.DARK))
                    .withTopic(Optional.of(new FollowedTopic("home/loft", "", TemperatureUnit.CELSIUS, -10, 45))));

    private static SensorWords words(Sensors.State state) {
        return SensorWords.of(state, CELLAR, "loft", Messages.english()).orElseThrow();
    }

    private static SensorWords heard(InvalidInput... faults) {
        SensorState sensor = new SensorState(Optional.of(HEARD), 7, faults.length, List.of(faults));
        return words(new Sensors.State(true, Optional.empty(), Map.of("loft", sensor), List.of()));
    }

    @Test
    void aPlaceWithoutASensorHasNoSign() {
        assertEquals(Optional.empty(), SensorWords.of(Sensors.State.NOTHING, CELLAR, "vault", Messages.english()));
    }

    @Test
    void aSensorThatIsHeardSaysWhenAndWantsNothing() {
        assertEquals("heard 14:05", heard().sign());
        assertFalse(heard().wantsLooking());
    }

    @Test
    void silenceNonsenseAndAMissingBrokerWantLooking() {
        assertTrue(words(Sensors.State.NOTHING).wantsLooking());
        SensorWords away = words(new Sensors.State(
                true, Optional.of(new InvalidInput("broker.home:1883", "listen.fault.away")), Map.of(), List.of()));
        assertEquals("broker away", away.sign());
        assertTrue(away.sentences().get(0).startsWith("The broker is not there"), "" + away.sentences());
        SensorWords silent = heard(new InvalidInput("Loft", "listen.fault.silent", "home/loft"));
        assertEquals("silent since 14:05", silent.sign());
        SensorWords nonsense = heard(new InvalidInput("Loft", "listen.fault.numberless", "home/loft", "online"));
        assertEquals("heard 14:05, 1 left out", nonsense.sign());
        assertTrue(nonsense.wantsLooking());
        assertEquals(3, nonsense.sentences().size());
    }
}
