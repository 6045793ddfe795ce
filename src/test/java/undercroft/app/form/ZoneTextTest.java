package undercroft.app.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import undercroft.quantity.InvalidInput;

/** Names from the IANA time zone database. */
class ZoneTextTest {
    @Test
    void aZoneIsTypedByItsNameItsTownOrItsOffset() {
        assertEquals(ZoneId.of("Europe/London"), ZoneText.parse("zone", "Europe/London"));
        assertEquals(ZoneId.of("Europe/Berlin"), ZoneText.parse("zone", " berlin "));
        assertEquals(ZoneId.of("America/New_York"), ZoneText.parse("zone", "New York"));
        assertEquals(ZoneId.of("+02:00"), ZoneText.parse("zone", "+02:00"));
    }

    @Test
    void anUnknownOneIsRefusedWhereItWasTyped() {
        InvalidInput fault = assertThrows(InvalidInput.class, () -> ZoneText.parse("zone", "Atlantis"));
        assertEquals("zone", fault.where());
    }
}
