package undercroft.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.UnmatchedArgumentException;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Language;
import undercroft.wording.Messages;

/** The commands, with one line on the error stream for every fault: exit code 2 for one of the user's, 1 for one of ours. */
public final class Commands {
    private static final String LANGUAGE = "--language";
    private static final int FAULT = 2;
    private static final int UNEXPECTED = 1;

    private static final Map<String, Function<Console, Object>> BY_NAME = new LinkedHashMap<>();

    static {
        BY_NAME.put("open", OpenCommand::new);
        BY_NAME.put("report", ReportCommand::new);
        BY_NAME.put("dose", DoseCommand::new);
        BY_NAME.put("pressure", PressureCommand::new);
        BY_NAME.put("light", LightCommand::new);
        BY_NAME.put("chill", ChillCommand::new);
        BY_NAME.put("import", ImportCommand::new);
        BY_NAME.put("draw", DrawCommand::new);
        BY_NAME.put("move", MoveCommand::new);
        BY_NAME.put("read", ReadCommand::new);
        BY_NAME.put("serve", ServeCommand::new);
        BY_NAME.put("cap", CapCommand::new);
        BY_NAME.put("check", CheckCommand::new);
        BY_NAME.put("calendar", CalendarCommand::new);
        BY_NAME.put("watch", WatchCommand::new);
        BY_NAME.put("export-experiment", ExportExperimentCommand::new);
        BY_NAME.put("check-experiment", CheckExperimentCommand::new);
    }

    private Commands() {}

    @Command(
            name = "undercroft",
            mixinStandardHelpOptions = true,
            versionProvider = VersionLine.class,
            synopsisSubcommandLabel = "[command]")
    private static final class Root {
        /** Heard before the line is read, as it decides the words in which its faults are told. */
        @SuppressWarnings("UnusedVariable")
        @Option(names = LANGUAGE, scope = ScopeType.INHERIT)
        private String language;
    }

    /** Runs one command line and returns its exit code. */
    public static int run(Console given, String... arguments) {
        Console console = given;
        try {
            console = given.speaking(language(arguments));
            String[] asked = arguments.length == 0 ? new String[] {"open"} : arguments;
            int code = line(console, asked[0]).execute(asked);
            if (console.out().checkError()) {
                say(console.err(), console.messages().of("command.fault.output"));
                return Math.max(code, UNEXPECTED);
            }
            return code;
        } catch (InvalidInput fault) {
            return say(console.err(), console.messages().fault(fault));
        } catch (Error unexpected) {
            return unexpected(console, unexpected);
        }
    }

    /** English unless another language is asked for: what a script reads must not hang on the machine it runs on. */
    private static Language language(String... arguments) {
        for (int i = 0; i < arguments.length; i++) {
            boolean apart = arguments[i].equals(LANGUAGE) && i + 1 < arguments.length;
            if (apart || arguments[i].startsWith(LANGUAGE + "=")) {
                String id = apart ? arguments[i + 1] : arguments[i].substring(LANGUAGE.length() + 1);
                return Language.of(id)
                        .filter(one -> one != Language.SYSTEM)
                        .orElseThrow(() -> new InvalidInput(
                                LANGUAGE, "command.fault.not-one-of", id, String.join(", ", Language.ids())));
            }
        }
        return Language.ENGLISH;
    }

    /** The line with every command. */
    static CommandLine line(Console console) {
        return line(console, "");
    }

    /** The line with the command that is asked for, or with all where it is none of them: each that is made costs a start time. */
    private static CommandLine line(Console console, String asked) {
        CommandLine line = new CommandLine(new Root());
        (BY_NAME.containsKey(asked) ? Set.of(asked) : BY_NAME.keySet())
                .forEach(name -> line.addSubcommand(name, BY_NAME.get(name).apply(console)));
        line.setExpandAtFiles(false).setOut(console.out()).setErr(console.err());
        line.setResourceBundle(console.messages().bundle("usage"));
        line.getSubcommands().values().forEach(one -> one.getCommandSpec().mixinStandardHelpOptions(true));
        line.setParameterExceptionHandler((fault, ignored) -> {
            String command = fault.getCommandLine().getCommandName();
            String hint = command.equals("undercroft") ? "" : command + " ";
            return say(console.err(), console.messages().of("command.see", what(fault, console.messages()), hint));
        });
        line.setExecutionExceptionHandler((fault, where, ignored) -> {
            if (fault instanceof InvalidInput input) {
                return say(console.err(), console.messages().fault(input));
            }
            return unexpected(console, fault);
        });
        return line;
    }

    private static int unexpected(Console console, Throwable fault) {
        Optional<Path> log = console.trouble().apply(fault);
        say(console.err(), console.messages().what(told(fault, log)));
        return UNEXPECTED;
    }

    private static InvalidInput told(Throwable fault, Optional<Path> log) {
        if (fault instanceof OutOfMemoryError) {
            return new InvalidInput("", "command.fault.memory");
        }
        return log.map(file -> new InvalidInput("", "fault.unexpected.logged", file.toString()))
                .orElseGet(() -> new InvalidInput(
                        "", "fault.unexpected.plain", fault.getClass().getSimpleName()));
    }

    /** The library's own sentences are in English only. */
    private static String what(ParameterException fault, Messages messages) {
        if (fault instanceof UnmatchedArgumentException unmatched) {
            return messages.of("command.fault.unknown", unmatched.getUnmatched().get(0));
        }
        if (fault instanceof MissingParameterException missing) {
            boolean oneOf = missing.getMissing().stream().allMatch(arg -> arg.group() != null);
            return messages.of(
                    oneOf ? "command.fault.one-of" : "command.fault.missing",
                    messages.list(
                            missing.getMissing().stream().map(Commands::name).toList()));
        }
        return fault.getArgSpec() == null
                ? fault.getMessage()
                : messages.of("command.fault.unfit", name(fault.getArgSpec()), fault.getValue());
    }

    private static String name(ArgSpec one) {
        return one instanceof OptionSpec option ? option.longestName() : one.paramLabel();
    }

    private static int say(PrintWriter err, String sentence) {
        err.println(sentence.replaceAll("\\R", " "));
        err.flush();
        return FAULT;
    }
}
