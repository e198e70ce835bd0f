// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.util.HashSet;
import java.util.Set;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;

/** Which layers (optional content groups, ISO 32000-1 clause 8.11) a file shows as it is opened. */
final class LayerState {

    private static final COSName OCGS = COSName.getPDFName("OCGs");
    private static final COSName POLICY = COSName.getPDFName("P");

    private final Set<COSDictionary> off = new HashSet<>();

    LayerState(PDDocument document) {
        PDOptionalContentProperties properties = document.getDocumentCatalog().getOCProperties();
        if (properties != null) {
            for (PDOptionalContentGroup group : properties.getOptionalContentGroups()) {
                if (!properties.isGroupEnabled(group)) {
                    off.add(group.getCOSObject());
                }
            }
        }
    }

    /** Whether what belongs to the given group or membership is not shown; null belongs to nothing. */
    boolean isOff(PDPropertyList owner) {
        return owner != null && isOff(owner.getCOSObject());
    }

    /** Whether what belongs to the given group or membership dictionary is not shown. */
    boolean isOff(COSDictionary owner) {
        if (off.isEmpty()) {
            return false;
        }
        if (off.contains(owner)) {
            return true;
        }
        COSBase members = owner.getDictionaryObject(OCGS);
        if (members instanceof COSDictionary single) {
            return isOffByPolicy(owner, off.contains(single) ? 1 : 0, 1);
        }
        if (members instanceof COSArray array) {
            int offCount = 0;
            int all = 0;
            for (int i = 0; i < array.size(); i++) {
                if (array.getObject(i) instanceof COSDictionary group) {
                    all++;
                    offCount += off.contains(group) ? 1 : 0;
                }
            }
            return all > 0 && isOffByPolicy(owner, offCount, all);
        }
        return false;
    }

    private static boolean isOffByPolicy(COSDictionary membership, int offCount, int all) {
        String policy = membership.getNameAsString(POLICY, "AnyOn");
        return switch (policy) {
            case "AllOn" -> offCount > 0;
            case "AnyOff" -> offCount == 0;
            case "AllOff" -> offCount < all;
            default -> offCount == all;
        };
    }
}
