package undercroft.demo;

import java.time.Instant;
import undercroft.outlook.*;
import undercroft.report.ShelfJson;

public class Scratch {
    public static void main(String[] args) throws Exception {
        var cellar = DemoCellar.cellar();
        var temps = DemoWeather.temperatures();
        Instant at = Instant.ofEpochSecond(DemoWeather.UNTIL);
        for (int i = 0; i < 8; i++) {
            long t = System.nanoTime();
            var o = Outlooks.of(cellar, temps, at);
            System.out.println((System.nanoTime() - t) / 1e6 + " ms");
            if (i == 7) {
                for (var b : o.batches())
                    System.out.println(
                            b.stage() + " " + b.alert() + " " + b.batch().name() + ": " + b.headline());
                for (var t2 : o.tasks()) System.out.println(t2);
                for (var s : o.spells()) {
                    System.out.println(s.place().name() + " " + s.from() + " " + s.until() + " " + s.peakCelsius()
                            + " warm " + s.warm());
                    for (var q : s.tolls()) System.out.println("   " + q);
                }
                for (var p : o.pours()) System.out.println(p);
                for (var p : o.problems()) System.out.println(p);
                for (var p : o.places())
                    System.out.println(p.place().name() + " " + p.nowCelsius() + " " + p.trendKelvin());
                java.nio.file.Files.writeString(java.nio.file.Path.of("/tmp/scratch/report.json"), ShelfJson.of(o));
            }
        }
    }
}
