package undercroft;

/** The command line. */
public final class Main {
    private Main() {}

    /** Runs the command named by the arguments. */
    public static void main(String[] args) {
        System.out.println("Undercroft");
    }
}
