package undercroft;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import undercroft.cellar.Cellar;
import undercroft.store.CellarStore;
import undercroft.store.DemoCellar;

/** The ways into a cellar. All of them read a disk. */
record Doors(HostEnvironment host, Clock clock) {
    private static final String DEMO = "weir-house";
    private static final String WRITTEN_BY = "undercroft";

    /**
     * An open store.
     *
     * @param clock what its cellar takes for now
     */
    record Door(CellarStore store, Clock clock) {}

    Door open(Path folder) {
        return new Door(CellarStore.open(folder, clock, WRITTEN_BY), clock);
    }

    /** To be looked at only, also while another window has it. */
    Door look(Path folder) {
        return new Door(CellarStore.look(folder, clock), clock);
    }

    Door create(Cellar cellar, Path folder) {
        return new Door(CellarStore.create(folder, cellar, clock, WRITTEN_BY), clock);
    }

    /** The demo, on a copy of its own, begun at the last moment its loggers wrote. */
    Door demo() {
        Path copy = host.privateFolder().resolve(DEMO);
        DemoCellar demo = DemoCellar.of(DEMO);
        demo.copyTo(copy);
        Instant last = demo.temperatures().values().stream()
                .filter(series -> !series.isEmpty())
                .map(series -> Instant.ofEpochSecond(series.lastTime()))
                .max(Instant::compareTo)
                .orElseGet(clock::instant);
        Clock then = Clock.offset(clock, Duration.between(clock.instant(), last));
        return new Door(CellarStore.open(copy, clock, WRITTEN_BY), then);
    }
}
