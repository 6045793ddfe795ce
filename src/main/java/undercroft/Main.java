package undercroft;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneId;
import undercroft.command.Commands;
import undercroft.command.Console;
import undercroft.store.Broker;
import undercroft.wording.Messages;

/** The command line. */
public final class Main {
    private Main() {}

    /** Runs the command named by the arguments; none opens the window. */
    public static void main(String[] arguments) {
        HostEnvironment host = HostEnvironment.here();
        Console console = new Console(
                new PrintWriter(System.out, false, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                Messages.english(),
                Clock.systemUTC(),
                ZoneId.systemDefault(),
                host.temporary(),
                OpenedBefore.on(host)::last,
                () -> Broker.in(host.settingsFolder()),
                new TroubleLog(host.stateFolder(), Clock.systemUTC())::note,
                request -> host.hasDisplay() && UndercroftApp.open(request));
        int code = Commands.run(console, arguments);
        if (code != 0) {
            System.exit(code);
        }
    }
}
