package undercroft.view.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Read back by the JDK's own decoder. */
class PngFileTest {
    @Test
    void anotherProgramReadsTheSamePixels() throws IOException {
        int width = 7;
        int height = 5;
        int[] argb = new int[width * height];
        for (int i = 0; i < argb.length; i++) {
            argb[i] = 0xFF000000 | (i * 997_331 & 0xFFFFFF);
        }
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(PngFile.of(width, height, argb)));
        assertNotNull(read);
        assertEquals(width, read.getWidth());
        assertEquals(height, read.getHeight());
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                assertEquals(argb[y * width + x], read.getRGB(x, y), x + "/" + y);
            }
        }
    }
}
