// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

/** The views' ids in plugin.xml. */
final class Views {

    static final String SHEETS = "org.probeleaf.workbench.view.sheets";
    static final String WHERE = "org.probeleaf.workbench.view.where";
    static final String LOG = "org.probeleaf.workbench.view.log";
    static final String JOB = "org.probeleaf.workbench.view.job";
    static final String PARTS = "org.probeleaf.workbench.view.parts";
    static final String CORRECTIONS = "org.probeleaf.workbench.view.corrections";
    static final String DOUBTS = "org.probeleaf.workbench.view.doubts";
    static final String BOARD = "org.probeleaf.workbench.view.board";
    static final String PUTBACK = "org.probeleaf.workbench.view.putback";
    static final String BOARDS = "org.probeleaf.workbench.view.boards";
    static final String ROUND = "org.probeleaf.workbench.view.round";

    static final String PART_BOOK = "org.probeleaf.workbench.view.partbook";

    static final String SUSPECTS = "org.probeleaf.workbench.view.suspects";

    static final String WAVES = "org.probeleaf.workbench.view.waves";

    static final String READINGS = "org.probeleaf.workbench.view.readings";

    private Views() {
    }
}
