package undercroft.command;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.UnmatchedArgumentException;
import undercroft.quantity.InvalidInput;

/** The commands, with one line on the error stream and exit code 2 for every fault of the user's. */
public final class Commands {
    private static final int FAULT = 2;

    private Commands() {}

    @Command(
            name = "undercroft",
            mixinStandardHelpOptions = true,
            versionProvider = ProgramVersion.class,
            description = "Watches over bottles that were primed at home.",
            synopsisSubcommandLabel = "[command]")
    private static final class Root {}

    /** Runs one command line and returns its exit code. */
    public static int run(Console console, String... arguments) {
        CommandLine line = new CommandLine(new Root())
                .addSubcommand(new OpenCommand(console))
                .addSubcommand(new ReportCommand(console))
                .addSubcommand(new DoseCommand(console))
                .addSubcommand(new PressureCommand(console))
                .addSubcommand(new LightCommand(console))
                .addSubcommand(new ChillCommand(console))
                .addSubcommand(new ImportCommand(console))
                .addSubcommand(new CheckCommand(console))
                .addSubcommand(new CalendarCommand(console))
                .setOut(console.out())
                .setErr(console.err());
        line.getSubcommands().values().forEach(one -> one.getCommandSpec().mixinStandardHelpOptions(true));
        line.setParameterExceptionHandler((fault, ignored) -> {
            String command = fault.getCommandLine().getCommandName();
            String hint = command.equals("undercroft") ? "" : command + " ";
            String what = fault instanceof UnmatchedArgumentException unmatched
                    ? "\"" + unmatched.getUnmatched().get(0) + "\" is not known here"
                    : fault.getMessage();
            return say(console.err(), what + "; see undercroft " + hint + "--help");
        });
        line.setExecutionExceptionHandler((fault, where, ignored) -> {
            if (fault instanceof InvalidInput) {
                return say(console.err(), fault.getMessage());
            }
            throw fault;
        });
        return line.execute(arguments.length == 0 ? new String[] {"open"} : arguments);
    }

    private static int say(PrintWriter err, String sentence) {
        err.println(sentence.replaceAll("\\R", " "));
        err.flush();
        return FAULT;
    }
}
