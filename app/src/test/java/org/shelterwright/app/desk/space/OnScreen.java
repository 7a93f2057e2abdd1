package org.shelterwright.app.desk.space;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Lets tests run only where there is a display, with 3D. */
public final class OnScreen implements ExecutionCondition {
    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        String display = System.getenv("DISPLAY");
        if (display == null || display.isEmpty()) {
            return ConditionEvaluationResult.disabled("There is no display: run under xvfb-run.");
        }
        System.setProperty("prism.forceGPU", "true");
        return ConditionEvaluationResult.enabled("There is a display.");
    }
}
