package undercroft.app.help;

import java.util.List;

/**
 * Something of others that the program is made of.
 *
 * @param name as its makers write it
 * @param licence its short name
 * @param text the file of the licence among the program's resources
 */
public record Library(String name, String licence, String text) {
    private static final String APACHE = "Apache-2.0";
    private static final String OWN = "/undercroft/licences/";
    /** The program's own licence is the same text. */
    private static final String APACHE_TEXT = OWN + "LICENSE";

    /** All of them; the tests hold the list to what the build declares. */
    public static final List<Library> ALL = List.of(
            new Library("OpenJDK", "GPL-2.0 with Classpath Exception", OWN + "javafx.txt"),
            new Library("OpenJFX", "GPL-2.0 with Classpath Exception", OWN + "javafx.txt"),
            new Library("Inter", "OFL-1.1", "/undercroft/assets/fonts/OFL.txt"),
            new Library("AtlantaFX", "MIT", OWN + "atlantafx.txt"),
            new Library("ControlsFX", "BSD-3-Clause", OWN + "controlsfx.txt"),
            new Library("Apache Commons Codec", APACHE, APACHE_TEXT),
            new Library("Apache Commons Lang", APACHE, APACHE_TEXT),
            new Library("Dagger", APACHE, OWN + "dagger.txt"),
            new Library("FastCSV", "MIT", OWN + "fastcsv.txt"),
            new Library("Hipparchus", APACHE, APACHE_TEXT),
            new Library("HiveMQ MQTT Client", APACHE, OWN + "hivemq-mqtt-client.txt"),
            new Library("iCal4j", "BSD-3-Clause", OWN + "ical4j.txt"),
            new Library("Jackson", APACHE, APACHE_TEXT),
            new Library("javax.inject", APACHE, OWN + "javax.inject.txt"),
            new Library("JCTools", APACHE, OWN + "jctools-core.txt"),
            new Library("Netty", APACHE, OWN + "netty.txt"),
            new Library("picocli", APACHE, OWN + "picocli.txt"),
            new Library("qrcodegen", "MIT", OWN + "qrcodegen.txt"),
            new Library("Reactive Streams", "MIT-0", OWN + "reactive-streams.txt"),
            new Library("RxJava", APACHE, OWN + "rxjava.txt"),
            new Library("SLF4J", "MIT", OWN + "slf4j.txt"),
            new Library("ThreeTen-Extra", "BSD-3-Clause", OWN + "threeten-extra.txt"));
}
