package org.bayledger.platform;

/** The service will not start as it is configured; says what to do about it. */
public final class StartupRefusedException extends RuntimeException {

    private final String action;

    /**
     * @param reason what is wrong
     * @param action what the operator can do
     */
    public StartupRefusedException(String reason, String action) {
        super(reason);
        this.action = action;
    }

    /** What the operator can do. */
    public String action() {
        return action;
    }
}
