package io.bindprep.maven;

import javax.inject.Inject;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProjectHelper;
import org.apache.maven.settings.crypto.SettingsDecrypter;

/**
 * Writes a proof of each PDF, NAME.proof.pdf: a copy with the holes, the margin and the findings as layers and
 * comments that do not print. Findings fail no build; a PDF that its owner locked against changes does.
 */
@Mojo(name = "proof", defaultPhase = LifecyclePhase.PACKAGE, threadSafe = true, requiresProject = false)
public final class ProofMojo extends GoalMojo {
    /** Tells whether only pages that are not clear are written; where all are clear there is no proof. */
    @Parameter(property = "bindprep.flagged", defaultValue = "false")
    private boolean flagged;

    /** As Maven makes it. */
    @Inject
    public ProofMojo(MavenProjectHelper projects, SettingsDecrypter decrypter) {
        super(projects, decrypter);
    }

    @Override
    Work work(OutputFolder folder, Engine engine) {
        return new ProofWork(folder, flagged, engine);
    }
}
