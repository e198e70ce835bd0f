// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.util.EnumMap;
import java.util.Map;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSUpdateInfo;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/**
 * Optional-content groups for marks, added to those that the document has; made when first asked for.
 * They came with PDF 1.5; an older file says from then on that it is one, in its catalogue.
 */
final class Layers {

    private static final float FIRST_WITH_LAYERS = 1.5f;

    private final PDDocument document;
    private final Map<Layer, PDOptionalContentGroup> groups = new EnumMap<>(Layer.class);

    Layers(PDDocument document) {
        this.document = document;
    }

    PDOptionalContentGroup group(Layer layer) {
        return groups.computeIfAbsent(layer, this::add);
    }

    private PDOptionalContentGroup add(Layer layer) {
        PDOptionalContentProperties properties = document.getDocumentCatalog().getOCProperties();
        if (properties == null) {
            properties = new PDOptionalContentProperties();
            document.getDocumentCatalog().setOCProperties(properties);
        }
        if (document.getVersion() < FIRST_WITH_LAYERS) {
            document.getDocumentCatalog().setVersion(Float.toString(FIRST_WITH_LAYERS));
        }
        PDOptionalContentGroup group = new PDOptionalContentGroup(layer.title());
        properties.addGroup(group);
        touch(document.getDocumentCatalog().getCOSObject());
        touch(properties.getCOSObject());
        for (COSName key : new COSName[] {COSName.D, COSName.OCGS}) {
            touch(properties.getCOSObject().getDictionaryObject(key));
        }
        COSDictionary d = properties.getCOSObject().getCOSDictionary(COSName.D);
        touch(d.getDictionaryObject(COSName.ON));
        touch(d.getDictionaryObject(COSName.ORDER));
        return group;
    }

    private static void touch(COSBase object) {
        if (object instanceof COSUpdateInfo updatable) {
            updatable.setNeedToBeUpdated(true);
        }
    }
}
