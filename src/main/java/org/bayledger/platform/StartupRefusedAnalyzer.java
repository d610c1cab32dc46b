package org.bayledger.platform;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Prints a refused start as two plain paragraphs instead of a stack trace. */
final class StartupRefusedAnalyzer extends AbstractFailureAnalyzer<StartupRefusedException> {

    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, StartupRefusedException cause) {
        return new FailureAnalysis(cause.getMessage(), cause.action(), cause);
    }
}
