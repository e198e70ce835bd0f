// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.job.change.SetDetails;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.SheetSession;

/** What the unit is, whose, what is wrong with it, what can hurt. What is typed is kept when the field is left. */
public final class JobView extends SessionView {

    private ScrolledComposite scroll;
    private Composite form;
    private Look look;
    private Text unit;
    private Text customer;
    private Text complaint;
    private Text technician;
    private final Map<Hazard, Button> hazards = new EnumMap<>(Hazard.class);
    private Label cautions;
    private Label file;

    @Override
    protected void createContent(Composite parent) {
        look = new Look(parent);
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        form = new Composite(scroll, SWT.NONE);
        form.setBackground(look.colour(Palette.WHITE));
        form.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 12;
        layout.marginHeight = 10;
        layout.verticalSpacing = 3;
        form.setLayout(layout);
        unit = field("Unit", 1, JobDetails::withUnit);
        complaint = field("Complaint", 3, JobDetails::withComplaint);
        customer = field("Customer", 1, JobDetails::withCustomer);
        technician = field("Technician", 1, JobDetails::withTechnician);
        label("Hazards");
        for (Hazard hazard : Hazard.values()) {
            Button check = new Button(form, SWT.CHECK);
            check.setText(hazard.title());
            check.addListener(SWT.Selection, e -> keepHazards());
            hazards.put(hazard, check);
        }
        cautions = wrapped();
        cautions.setForeground(look.colour(Palette.TEXT));
        label("File");
        file = wrapped();
        file.setForeground(look.colour(Palette.QUIET));
        scroll.setContent(form);
        scroll.addListener(SWT.Resize, e -> fit());
    }

    private Label wrapped() {
        Label label = new Label(form, SWT.WRAP);
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
        wide.widthHint = 160;
        label.setLayoutData(wide);
        return label;
    }

    private void label(String text) {
        Label label = new Label(form, SWT.NONE);
        label.setText(text);
        label.setFont(look.font(-1, true));
        label.setForeground(look.colour(Palette.QUIET));
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.verticalIndent = 6;
        label.setLayoutData(data);
    }

    private Text field(String name, int lines, BiFunction<JobDetails, String, JobDetails> with) {
        label(name);
        Text text = new Text(form, lines == 1 ? SWT.BORDER : SWT.BORDER | SWT.MULTI | SWT.WRAP);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 120;
        data.heightHint = lines == 1 ? SWT.DEFAULT : lines * text.getLineHeight();
        text.setLayoutData(data);
        text.addListener(SWT.FocusOut, e -> keep(d -> with.apply(d, text.getText().strip())));
        text.addListener(SWT.DefaultSelection, e -> keep(d -> with.apply(d, text.getText().strip())));
        return text;
    }

    private void keepHazards() {
        List<Hazard> set = new ArrayList<>();
        hazards.forEach((h, b) -> {
            if (b.getSelection()) {
                set.add(h);
            }
        });
        keep(d -> d.withHazards(set));
    }

    private void keep(java.util.function.UnaryOperator<JobDetails> change) {
        SheetSession session = session().orElse(null);
        if (session == null || session.readOnly() || facts().isEmpty()) {
            return;
        }
        JobDetails before = facts().get().state().details();
        JobDetails after = change.apply(before);
        if (!after.equals(before)) {
            session.apply(new SetDetails(after, Instant.now()));
        }
    }

    @Override
    protected void refresh() {
        if (form.isDisposed()) {
            return;
        }
        JobDetails d = facts().map(f -> f.state().details()).orElse(JobDetails.blank());
        boolean editable = facts().isPresent() && session().map(s -> !s.readOnly()).orElse(false);
        set(unit, d.unit(), editable);
        set(customer, d.customer(), editable);
        set(complaint, d.complaint(), editable);
        set(technician, d.technician(), editable);
        hazards.forEach((h, b) -> {
            b.setSelection(d.hazards().contains(h));
            b.setEnabled(editable);
        });
        cautions.setText(d.hazards().isEmpty() ? "" : d.hazards().stream().map(Hazard::caution)
                .collect(Collectors.joining("\n\n", "", "\n\n" + Hazard.CLOSING)));
        file.setText(session().flatMap(SheetSession::file).map(f -> f + "\nEach change is on disk as soon as it shows.")
                .orElse(""));
        fit();
    }

    private static void set(Text field, String text, boolean editable) {
        if (!field.getText().equals(text) && !field.isFocusControl()) {
            field.setText(text);
        }
        field.setEnabled(editable);
    }

    private void fit() {
        int width = scroll.getClientArea().width;
        scroll.setMinSize(form.computeSize(Math.max(160, width), SWT.DEFAULT));
        form.layout(true, true);
    }

    @Override
    public void setFocus() {
        unit.setFocus();
    }
}
