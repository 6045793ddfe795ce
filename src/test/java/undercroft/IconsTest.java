package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sizes that the icon theme specification of the free desktops lists. */
final class IconsTest {
    private static final int OPAQUE = 255;

    @ParameterizedTest
    @ValueSource(ints = {16, 22, 24, 32, 48, 64, 128, 256, 512})
    void anIconHasTheSizeItIsNamedAfterAndSomethingOnIt(int size) throws IOException {
        BufferedImage icon =
                ImageIO.read(Path.of("assets/icons/undercroft-" + size + ".png").toFile());
        assertEquals(size, icon.getWidth());
        assertEquals(size, icon.getHeight());
        assertEquals(0, icon.getRGB(0, 0) >>> 24, "clear in the corner");
        assertEquals(OPAQUE, icon.getRGB(size / 2, size / 2) >>> 24, "drawn in the middle");
    }
}
