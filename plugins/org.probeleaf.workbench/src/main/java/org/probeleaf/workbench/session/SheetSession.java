// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Display;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobState;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;

/**
 * A job that is open in the window. Called on the display thread; whatever touches a file is done on one thread of
 * its own, in the order asked. Whoever made it closes it.
 */
public final class SheetSession {

    private final Path asked;
    private final Display display;
    private final List<SessionListener> listeners = new CopyOnWriteArrayList<>();
    private final JobThread worker = new JobThread(() -> post(() -> tell(SessionListener::statusChanged)),
            this::showTrouble);
    /** Owned by the worker. */
    private Facts workerFacts;

    /** Owned by the display thread. */
    private Sheets sheets = Sheets.none();
    private Facts facts;
    private Selection selection;
    private Net hover;
    private String selectedMark;
    private Trouble trouble;
    private final RecognitionRun recognition = new RecognitionRun(new Host(), t -> this.trouble = t);
    private final RouteFinder routes = new RouteFinder(worker, this::post, () -> facts, () -> tell(
            SessionListener::routeChanged));
    private final SuspectFinder suspects = new SuspectFinder(this::post, () -> tell(SessionListener::suspectsChanged));
    private final CaptureShelf captures = new CaptureShelf(worker, this::post, this::showTrouble,
            () -> tell(SessionListener::capturesChanged));
    private final Runnable priorsChanged = () -> post(() -> this.suspects.look(facts));
    private int currentPage;
    private boolean drawn;
    private boolean recogniseWhenDrawn;
    private boolean readOnly;
    private boolean closed;
    private Path file;
    private final Runnable bookChanged = () -> onJob(j -> publish(factsOf(j.state())));

    /** @param asked a sheet or a job file */
    public SheetSession(Path asked, Display display) {
        this.asked = asked;
        this.display = display;
        OwnPartBook.shared().addListener(bookChanged);
        OwnPriors.shared().addListener(priorsChanged);
    }

    /** Opens the file in the background; the listeners hear how it goes. */
    public void open(String password) {
        trouble = null;
        worker.execute(() -> {
            try {
                new SessionOpener(asked, password, this::showSheets, this::showTrouble).open(this::opened);
            } catch (java.io.IOException e) {
                showTrouble(SessionOpener.trouble(e));
            } catch (RuntimeException e) {
                showTrouble(new Trouble(Trouble.Kind.RETRY, asked.getFileName() + " cannot be opened (" + e + ")"));
            }
        });
    }

    private void showSheets(Sheets ready) {
        post(() -> {
            Sheets before = sheets;
            sheets = ready;
            worker.execute(before::close);
            tell(SessionListener::sheetsReady);
        });
    }

    private void showTrouble(Trouble what) {
        post(() -> {
            trouble = what;
            tell(SessionListener::statusChanged);
        });
    }

    /** On the worker: the job is open. */
    private void opened(Job ready) {
        worker.take(ready);
        ready.addListener(state -> publish(factsOf(state)));
        boolean toRead = ready.readOnly();
        Path place = ready.file();
        post(() -> {
            readOnly = toRead;
            file = place;
        });
        publish(Facts.of(ready.state(), OwnPartBook.shared().book(), null));
        if (ready.state().netlist() == null) {
            post(() -> {
                recogniseWhenDrawn = true;
                recogniseIfDue();
            });
        }
    }

    /** The first page can be seen (or will never be); what is less urgent may begin. */
    public void firstDrawn() {
        if (!drawn) {
            drawn = true;
            recogniseIfDue();
        }
    }

    /** Whether the first page can be seen. */
    public boolean drawn() {
        return drawn;
    }

    private void recogniseIfDue() {
        if (drawn && recogniseWhenDrawn) {
            recogniseWhenDrawn = false;
            recognise();
        }
    }

    private Facts factsOf(JobState state) {
        return Facts.of(state, OwnPartBook.shared().book(), workerFacts);
    }

    private void publish(Facts next) {
        workerFacts = next;
        post(() -> {
            boolean otherNets = facts == null || facts.graph() != next.graph();
            facts = next;
            if (otherNets && selection != null) {
                selection = next.at(selection.page(), selection.at(), 3);
                hover = null;
            }
            tell(SessionListener::factsChanged);
            suspects.look(next);
            if (otherNets) {
                tell(SessionListener::selectionChanged);
                routes.again();
            }
        });
    }

    /** Recognises the sheets anew in the background, unless that is under way. */
    public void recognise() {
        if (!closed) {
            recognition.start();
        }
    }

    /** Stops the recognition at the next page. */
    public void stopRecognition() {
        recognition.stop();
    }

    private final class Host implements RecognitionRun.Host {
        @Override
        public Job job() {
            return worker.job();
        }

        @Override
        public void keep(Netlist netlist) {
            onJob(j -> {
                if (j.readOnly()) {
                    publish(factsOf(SessionOpener.with(j.state(), netlist)));
                } else {
                    j.setNetlist(netlist);
                }
            });
        }

        @Override
        public void post(Runnable what) {
            SheetSession.this.post(what);
        }

        @Override
        public void progressed() {
            tell(SessionListener::statusChanged);
        }
    }

    private void onJob(JobThread.JobAction action) {
        if (!closed) {
            worker.onJob(action);
        }
    }

    /** Whether a change is on its way to disk. */
    public boolean saving() {
        return worker.busy();
    }

    /** Makes a change; it shows when it is safe on disk. */
    public void apply(Change change) {
        onJob(j -> j.apply(change));
    }

    /** Does something; it shows when it is safe on disk. What cannot be done is told as trouble. */
    public void perform(Deed deed) {
        if (deed instanceof Deed.OnReading reading) {
            onJob(j -> j.correct(reading.correction(), Instant.now()));
        } else if (deed instanceof Deed.OnBoard board) {
            onJob(j -> j.changeBoard(List.of(KeptBoardChange.of(board.board(), board.change(), board.temporary(), "",
                    Instant.now()))));
        }
    }

    /**
     * Finds out in the background what something would do.
     *
     * @param then told on the display thread; not at all before the sheets are recognised
     */
    public void tryOut(Deed deed, Consumer<Trial> then) {
        JobState now = facts == null ? null : facts.state();
        if (now != null && now.netlist() != null && !closed) {
            worker.execute(() -> {
                Trial trial = deed instanceof Deed.OnReading reading
                        ? Trial.of(now.sheetReading(), reading.correction())
                        : Trial.of(now.boards(), (Deed.OnBoard) deed);
                post(() -> then.accept(trial));
            });
        }
    }

    /**
     * Writes the marked-up sheets beside the job; where they are is told as a notice. Where something done for now is
     * still to be put back, that is told instead and nothing is written.
     *
     * @param acceptOpen whether to write them all the same
     */
    public void handOver(boolean acceptOpen) {
        onJob(j -> showTrouble(HandOver.write(j, acceptOpen)));
    }

    public void undo() {
        onJob(Job::undo);
    }

    public void redo() {
        onJob(Job::redo);
    }

    /** The pages; none before the file is open. */
    public Sheets sheets() {
        return sheets;
    }

    /** What is known; empty before the job is open. */
    public Optional<Facts> facts() {
        return Optional.ofNullable(facts);
    }

    /** The job's file; empty before it is open. */
    public Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    /** The file that was asked for. */
    public Path asked() {
        return asked;
    }

    /** Whether another writer has the job. */
    public boolean readOnly() {
        return readOnly;
    }

    public Optional<Selection> selection() {
        return Optional.ofNullable(selection);
    }

    /** The selected net. */
    public Optional<Net> selectedNet() {
        return selection().map(Selection::net);
    }

    /** @param next what is now selected, or null */
    public void select(Selection next) {
        if (!Objects.equals(selection, next) || selectedMark != null) {
            selection = next;
            selectedMark = null;
            tell(SessionListener::selectionChanged);
            routes.begin(next);
        }
    }

    /** Where the selected signal goes. */
    public RouteFinder routes() {
        return routes;
    }

    /** The parts that may be to blame for what was read. */
    public SuspectFinder suspects() {
        return suspects;
    }

    /** The captures of the job, as they are read. */
    public CaptureShelf captures() {
        return captures;
    }

    /** Pins a file as a capture to a place; it shows when it is safe on disk. */
    public void pinCapture(Path capture, Selection at, String readAs) {
        captures.pin(capture, at, readAs);
    }

    /** Selects a pin at a net of the route, by its number; the route stays. */
    public void standAt(int number, Selection next) {
        selection = next;
        selectedMark = null;
        tell(SessionListener::selectionChanged);
        routes.standAt(number);
    }

    /** Id of the selected mark. */
    public Optional<String> selectedMark() {
        return Optional.ofNullable(selectedMark);
    }

    /** Selects a mark with the place it is pinned to. */
    public void selectMark(String id, Selection place) {
        selection = place;
        selectedMark = id;
        tell(SessionListener::selectionChanged);
        routes.begin(place);
    }

    public Optional<Net> hover() {
        return Optional.ofNullable(hover);
    }

    /** @param net the net under the pointer, or null */
    public void setHover(Net net) {
        if (hover != net) {
            hover = net;
            tell(SessionListener::hoverChanged);
        }
    }

    /** What stands in the way. */
    public Optional<Trouble> trouble() {
        return Optional.ofNullable(trouble);
    }

    /** The person has seen it. */
    public void clearTrouble() {
        trouble = null;
        tell(SessionListener::statusChanged);
    }

    /** Whether the sheets are being recognised. */
    public boolean recognising() {
        return recognition.running();
    }

    public int pagesDone() {
        return recognition.pagesDone();
    }

    /** Pages to recognise; 0 where it is not known yet. */
    public int pagesTotal() {
        return recognition.pagesTotal();
    }

    /** The page in the middle of the view, 1-based; 0 before there is one. */
    public int currentPage() {
        return currentPage;
    }

    /** The editor shows another page. */
    public void setCurrentPage(int page) {
        if (currentPage != page) {
            currentPage = page;
            tell(SessionListener::pageChanged);
        }
    }

    /** Shows a page whole; nothing happens where there is no such page. */
    public void showPage(int page) {
        tell(l -> l.showPage(page));
    }

    /** Brings a piece of a page into sight. */
    public void reveal(int page, Box box) {
        tell(l -> l.reveal(page, box));
    }

    public void addListener(SessionListener listener) {
        listeners.add(listener);
    }

    public void removeListener(SessionListener listener) {
        listeners.remove(listener);
    }

    private void tell(Consumer<SessionListener> what) {
        listeners.forEach(what);
    }

    private void post(Runnable what) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!closed) {
                    what.run();
                }
            });
        }
    }

    /** Stops what is under way and lets the files go, in the background. */
    public void close() {
        closed = true;
        OwnPartBook.shared().removeListener(bookChanged);
        OwnPriors.shared().removeListener(priorsChanged);
        suspects.close();
        captures.close();
        listeners.clear();
        stopRecognition();
        Sheets open = sheets;
        worker.end(open::close);
    }
}
