package undercroft.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class WindowBoundsTest {
    private static final WindowBounds SMALL = new WindowBounds(0, 24, 958, 576);
    private static final WindowBounds LARGE = new WindowBounds(958, 0, 1920, 1080);

    @Property(seed = "20260104")
    void allOfTheWindowIsAlwaysOnOneScreen(
            @ForAll @DoubleRange(min = -5000, max = 5000) double x,
            @ForAll @DoubleRange(min = -5000, max = 5000) double y,
            @ForAll @DoubleRange(min = 1, max = 9000) double width,
            @ForAll @DoubleRange(min = 1, max = 9000) double height) {
        WindowBounds at = new WindowBounds(x, y, width, height).within(List.of(SMALL, LARGE));
        assertTrue(isInside(at, SMALL) || isInside(at, LARGE), at::toString);
    }

    private static boolean isInside(WindowBounds window, WindowBounds screen) {
        return window.x() >= screen.x()
                && window.y() >= screen.y()
                && window.x() + window.width() <= screen.x() + screen.width() + 1e-9
                && window.y() + window.height() <= screen.y() + screen.height() + 1e-9;
    }

    @Test
    void aWindowThatFitsStaysWhereItWas() {
        WindowBounds wanted = new WindowBounds(1000, 50, 1280, 800);
        assertEquals(wanted, wanted.within(List.of(SMALL, LARGE)));
    }

    @Test
    void aWindowOfAScreenThatWasTakenAwayComesBackToTheFirst() {
        assertEquals(new WindowBounds(0, 24, 958, 576), new WindowBounds(4000, 50, 1280, 800).within(List.of(SMALL)));
    }
}
