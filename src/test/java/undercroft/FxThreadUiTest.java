package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordedFrame;
import jdk.jfr.consumer.RecordingFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/**
 * A tour of the whole window, recorded by the flight recorder of the JVM: the window's own thread reads and writes no file
 * of a cellar and works out no shelf, however fast the machine is.
 */
@ExtendWith(ApplicationExtension.class)
class FxThreadUiTest extends Evening {
    @Start
    void start(Stage shown) {
        take(shown);
    }

    private static final String WINDOW_THREAD = "JavaFX Application Thread";

    private void tour() throws IOException {
        Path folder = folder(JourneyCellars.cupboard(NOW));
        foreignLog();
        begin(Locale.UK, folder.toString());
        hand.awaitText("inspector-name", "Ale");
        hand.click("place-cupboard");
        hand.chooseLine("Bring in temperatures");
        hand.click("import-choose");
        hand.see("import-lines");
        hand.click("form-save");
        hand.awaitGone("form-save");
        hand.click("open-batch");
        hand.click("batch-draw");
        hand.fill("draw-count", "2");
        hand.click("form-save");
        hand.awaitGone("form-save");
        hand.click("undo");
        hand.click("page-warm-spells");
        hand.click("tab-what-if");
        hand.click("what-if-ask");
        hand.see("what-if-headline");
        hand.click("page-servings");
        hand.see("which-batch");
        hand.click("page-bottling-day");
        hand.see("new-draft-name");
        hand.click("page-shelf");
        hand.click("back");
        hand.push(KeyCode.CONTROL, KeyCode.Y);
        hand.awaitText("inspector-headline", "38 bottles left");
    }

    private static List<RecordedEvent> recorded(Recording recording, Path file) throws IOException {
        recording.stop();
        recording.dump(file);
        return RecordingFile.readAllEvents(file);
    }

    private static boolean isOnWindowThread(RecordedEvent event) {
        String field = event.hasField("sampledThread") ? "sampledThread" : "eventThread";
        return event.getThread(field) != null
                && WINDOW_THREAD.equals(event.getThread(field).getJavaName());
    }

    private static Optional<String> frame(RecordedEvent event, String room) {
        return event.getStackTrace() == null
                ? Optional.empty()
                : event.getStackTrace().getFrames().stream()
                        .filter(RecordedFrame::isJavaFrame)
                        .map(frame -> frame.getMethod().getType().getName() + "."
                                + frame.getMethod().getName())
                        .filter(name -> name.startsWith(room))
                        .findFirst();
    }

    @Test
    void aTourReadsNoFileAndWorksOutNoShelfOnTheWindowsThread() throws IOException {
        Path file = Files.createTempFile("tour", ".jfr");
        try (Recording recording = new Recording()) {
            for (String event : List.of("jdk.FileRead", "jdk.FileWrite", "jdk.FileForce")) {
                recording.enable(event).withoutThreshold().withStackTrace();
            }
            recording.enable("jdk.ExecutionSample").withPeriod(Duration.ofMillis(10));
            recording.start();
            tour();
            List<RecordedEvent> events = recorded(recording, file);
            TreeSet<String> found = new TreeSet<>();
            int elsewhere = 0;
            for (RecordedEvent event : events) {
                boolean sample = event.getEventType().getName().equals("jdk.ExecutionSample");
                if (sample && isOnWindowThread(event)) {
                    frame(event, "undercroft.outlook.Outlooks").ifPresent(found::add);
                } else if (!sample
                        && event.getString("path") != null
                        && event.getString("path").startsWith(home.toString())) {
                    elsewhere++;
                    if (isOnWindowThread(event)) {
                        found.add(event.getEventType().getName() + " " + event.getString("path") + " from "
                                + frame(event, "undercroft.").orElse("the toolkit"));
                    }
                }
            }
            assertTrue(elsewhere > 20, "what goes to a disk is recorded: " + elsewhere);
            assertEquals(new TreeSet<String>(), found);
        } finally {
            Files.delete(file);
        }
    }
}
