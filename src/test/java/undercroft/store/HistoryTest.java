package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.FaultyDisk;

class HistoryTest {
    private static final Instant NOON = Instant.parse("2026-05-01T12:00:00Z");

    @TempDir
    Path folder;

    private History history;

    @BeforeEach
    void make() {
        history = History.ofCellar(CellarFolder.of(folder), new AtomicFile(new FaultyDisk("", (call, path) -> false)));
    }

    private void keepAndPrune(Instant time) {
        history.keep(new byte[] {'x'}, time);
        history.prune(time);
    }

    private List<Instant> times() {
        return history.versions().stream().map(Version::until).toList();
    }

    @Test
    void anHourOfSavesEveryMinuteLeavesTheNewestThirty() {
        for (int minute = 0; minute < 60; minute++) {
            keepAndPrune(NOON.plus(Duration.ofMinutes(minute)));
        }
        assertEquals(30, times().size());
        assertEquals(NOON.plus(Duration.ofMinutes(59)), times().get(0));
        assertEquals(NOON.plus(Duration.ofMinutes(30)), times().get(29));
    }

    @Test
    void ofEarlierDaysTheLastVersionStaysForThirtyDays() {
        for (int day = 0; day < 60; day++) {
            for (int save = 0; save < 3; save++) {
                keepAndPrune(NOON.plus(Duration.ofDays(day)).plusSeconds(save));
            }
        }
        for (int save = 3; save < 40; save++) {
            keepAndPrune(NOON.plus(Duration.ofDays(59)).plusSeconds(save));
        }
        Instant last = NOON.plus(Duration.ofDays(58)).plusSeconds(2);
        List<Instant> older = times().subList(30, times().size());
        assertEquals(
                29, older.size(), "the newest thirty are of the last day; 29 days before it lie within thirty days");
        for (int i = 0; i < older.size(); i++) {
            assertEquals(last.minus(Duration.ofDays(i)), older.get(i));
        }
    }

    @Test
    void oldVersionsStayWhileTheyAreAmongTheNewest() {
        keepAndPrune(NOON);
        keepAndPrune(NOON.plus(Duration.ofDays(400)));
        assertEquals(2, times().size());
    }

    @Test
    void aClockThatRanAheadTakesNothingAway() {
        for (int day = 0; day < 20; day++) {
            keepAndPrune(NOON.plus(Duration.ofDays(day)));
        }
        Instant ahead = NOON.plus(Duration.ofDays(900));
        for (int save = 0; save < 40; save++) {
            keepAndPrune(ahead.plusSeconds(save));
        }
        Instant right = NOON.plus(Duration.ofDays(20));
        for (int save = 0; save < 40; save++) {
            keepAndPrune(right.plusSeconds(save));
        }
        List<Instant> left = times();
        for (int day = 0; day < 20; day++) {
            assertTrue(left.contains(NOON.plus(Duration.ofDays(day))), "day " + day);
        }
        assertTrue(left.contains(right.plusSeconds(39)) && left.contains(right.plusSeconds(10)), "newest ones");
        assertTrue(left.contains(ahead.plusSeconds(39)));
    }

    @Test
    void twoVersionsOfOneMillisecondAreBothKept() {
        history.keep(new byte[] {'a'}, NOON);
        history.keep(new byte[] {'b'}, NOON);
        assertEquals(List.of(NOON.plusMillis(1), NOON), times());
    }

    @Test
    void filesOfOtherNamesAreLeftAlone() throws IOException {
        Path mine = Files.createDirectories(folder.resolve("history")).resolve("cellar-before-the-move.json");
        Files.createFile(mine);
        for (int i = 0; i < 40; i++) {
            keepAndPrune(NOON.plusSeconds(i));
        }
        assertEquals(30, times().size());
        assertTrue(Files.exists(mine));
    }
}
