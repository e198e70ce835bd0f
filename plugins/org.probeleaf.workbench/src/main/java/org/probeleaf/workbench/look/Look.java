// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.look;

import java.net.URL;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;

/** The resources of one widget; let go when the widget is disposed. Used on the display thread. */
public final class Look {

    private final LocalResourceManager resources;
    private final Font base;

    /** @param owner the widget that uses them */
    public Look(Control owner) {
        this.resources = new LocalResourceManager(JFaceResources.getResources(owner.getDisplay()), owner);
        this.base = owner.getDisplay().getSystemFont();
    }

    public Color colour(RGB rgb) {
        return resources.create(org.eclipse.jface.resource.ColorDescriptor.createFrom(rgb));
    }

    /** The icon with the given name, without folder or ending. */
    public Image icon(String name) {
        return resources.create(descriptor(name));
    }

    /** The system's font, larger or smaller by some points. */
    public Font font(int morePoints, boolean bold) {
        FontDescriptor d = FontDescriptor.createFrom(base).increaseHeight(morePoints);
        return resources.create(bold ? d.setStyle(SWT.BOLD) : d);
    }

    /** The descriptor of an icon. */
    public static ImageDescriptor descriptor(String name) {
        URL url = Look.class.getResource("/icons/" + name + ".svg");
        if (url == null) {
            throw new IllegalArgumentException("no icon " + name);
        }
        return ImageDescriptor.createFromURL(url);
    }
}
