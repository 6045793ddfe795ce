package undercroft.cellar;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;

/**
 * What holds for the whole cellar.
 *
 * @param pageAddress where the page that {@code watch} publishes is read, for the code on a crate label; empty where it is
 *     not published
 * @param learnsSince batches capped before then teach nothing about later ones; empty where all may
 */
public record Settings(
        UnitSystem units, double altitudeMetres, Optional<String> pageAddress, Optional<Instant> learnsSince) {
    public static final Settings USUAL = new Settings(UnitSystem.METRIC, 0);

    /** A longer one makes a code that a phone cannot read from a label. */
    private static final int LONGEST_ADDRESS = 300;

    private static final Set<String> SCHEMES = Set.of("http", "https");

    public Settings {
        Check.within("altitudeMetres", altitudeMetres, -400, 5_000, "m");
        pageAddress.ifPresent(Settings::checkAddress);
    }

    /** Without a page. */
    public Settings(UnitSystem units, double altitudeMetres) {
        this(units, altitudeMetres, Optional.empty(), Optional.empty());
    }

    private static void checkAddress(String address) {
        if (address.length() > LONGEST_ADDRESS) {
            throw new InvalidInput("pageAddress", "fault.too-long", LONGEST_ADDRESS);
        }
        try {
            URI page = new URI(address);
            if (page.getScheme() == null || !SCHEMES.contains(page.getScheme().toLowerCase(Locale.ROOT))) {
                throw new InvalidInput("pageAddress", "cellar.fault.no-web-address");
            }
            if (page.getHost() == null || page.getUserInfo() != null) {
                throw new InvalidInput("pageAddress", "cellar.fault.no-web-address");
            }
            if (page.getFragment() != null) {
                throw new InvalidInput("pageAddress", "cellar.fault.anchor");
            }
        } catch (URISyntaxException malformed) {
            throw new InvalidInput("pageAddress", "cellar.fault.no-web-address");
        }
    }

    public Settings withUnits(UnitSystem changed) {
        return new Settings(changed, altitudeMetres, pageAddress, learnsSince);
    }

    /** The same, but nothing capped before an instant teaches any more. */
    public Settings learningSince(Instant instant) {
        return new Settings(units, altitudeMetres, pageAddress, Optional.of(instant));
    }

    /** Where one batch is found on the page. */
    public Optional<String> addressOf(String batchId) {
        return pageAddress.map(page -> page + "#batch-" + batchId);
    }
}
