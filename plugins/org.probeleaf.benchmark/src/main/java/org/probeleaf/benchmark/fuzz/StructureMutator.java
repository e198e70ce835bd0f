// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Damages what a PDF says rather than its bytes: pages, streams, objects; then writes it as a sound file. */
final class StructureMutator {

    private static final float[] ABSURD = {0, -1, 1e-30f, 1e9f, -1e9f, 3e38f, 14_400, 0.001f, Float.NaN, 1e6f};

    private final PDDocument document;
    private final Random random;

    private StructureMutator(PDDocument document, Random random) {
        this.document = document;
        this.random = random;
    }

    /** Damages a file; one that cannot be taken apart or written again comes back as it is. */
    static Mutator.Mutant mutate(byte[] source, Random random) {
        String how = "untouched";
        try (PDDocument document = Loader.loadPDF(source)) {
            // Else the time of day would be in it.
            document.setDocumentId(1L);
            how = new StructureMutator(document, random).mutate();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out, random.nextBoolean() ? CompressParameters.DEFAULT_COMPRESSION
                    : CompressParameters.NO_COMPRESSION);
            return new Mutator.Mutant(out.toByteArray(), how);
        } catch (IOException | RuntimeException | StackOverflowError e) {
            return new Mutator.Mutant(source, "untouched, since writing failed after: " + how);
        }
    }

    private String mutate() throws IOException {
        PDPage page = document.getPage(random.nextInt(document.getNumberOfPages()));
        switch (random.nextInt(8)) {
            case 0:
                pageBox(page.getCOSObject());
                return "page box";
            case 1:
                entries(1 + random.nextInt(5));
                return "entries";
            case 2:
                streamBytes();
                return "bytes in a stream";
            case 3:
                HostileContent.nestForms(document, page, random);
                return "nested forms";
            case 4:
                references(1 + random.nextInt(4));
                return "references";
            default:
                ContentMutator content = new ContentMutator(random);
                write(page.getCOSObject(), content.mutate(read(page)));
                return content.how();
        }
    }

    private static byte[] read(PDPage page) throws IOException {
        try (var in = page.getContents()) {
            return in.readAllBytes();
        }
    }

    private void write(COSDictionary page, byte[] content) throws IOException {
        COSStream stream = new COSStream();
        try (OutputStream out = random.nextBoolean() ? stream.createOutputStream(COSName.FLATE_DECODE)
                : stream.createOutputStream()) {
            out.write(content);
        }
        page.setItem(COSName.CONTENTS, stream);
    }

    private void pageBox(COSDictionary page) {
        COSName box = random.nextBoolean() ? COSName.MEDIA_BOX : COSName.CROP_BOX;
        COSArray array = new COSArray();
        for (int i = 0; i < 4; i++) {
            array.add(number());
        }
        page.setItem(box, random.nextInt(6) == 0 ? COSNull.NULL : array);
        if (random.nextInt(3) == 0) {
            page.setItem(COSName.ROTATE, COSInteger.get(random.nextInt(1000) - 500));
        }
        if (random.nextInt(3) == 0) {
            page.setItem(COSName.getPDFName("UserUnit"), number());
        }
    }

    private COSBase number() {
        return new COSFloat(random.nextInt(3) == 0 ? random.nextInt(2000) : ABSURD[random.nextInt(ABSURD.length)]);
    }

    /** Changes or removes entries of dictionaries anywhere. */
    private void entries(int count) {
        List<COSDictionary> all = dictionaries();
        for (int i = 0; i < count && !all.isEmpty(); i++) {
            COSDictionary some = all.get(random.nextInt(all.size()));
            List<COSName> keys = new ArrayList<>(some.keySet());
            if (keys.isEmpty()) {
                continue;
            }
            COSName key = keys.get(random.nextInt(keys.size()));
            switch (random.nextInt(4)) {
                case 0 -> some.removeItem(key);
                case 1 -> some.setItem(key, number());
                case 2 -> some.setItem(key, new COSArray());
                default -> some.setItem(key, COSName.getPDFName("Strange" + random.nextInt(10)));
            }
        }
    }

    /** Makes entries point to other objects of the file: forms to pages, pages to fonts, parents to children. */
    private void references(int count) {
        List<COSDictionary> all = dictionaries();
        for (int i = 0; i < count && !all.isEmpty(); i++) {
            COSDictionary some = all.get(random.nextInt(all.size()));
            List<COSName> keys = new ArrayList<>(some.keySet());
            if (!keys.isEmpty()) {
                some.setItem(keys.get(random.nextInt(keys.size())), all.get(random.nextInt(all.size())));
            }
        }
    }

    /** Damages the unpacked bytes of any stream: fonts, character maps, forms, pictures. */
    private void streamBytes() throws IOException {
        List<COSStream> streams = new ArrayList<>();
        dictionaries().stream().filter(COSStream.class::isInstance).forEach(s -> streams.add((COSStream) s));
        if (streams.isEmpty()) {
            return;
        }
        COSStream stream = streams.get(random.nextInt(streams.size()));
        byte[] bytes;
        try (var in = stream.createInputStream()) {
            bytes = in.readAllBytes();
        }
        for (int i = 0; i < 1 + bytes.length / 50 && bytes.length > 0 && i < 300; i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(bytes);
        }
    }

    private List<COSDictionary> dictionaries() {
        List<COSDictionary> found = new ArrayList<>();
        document.getDocument().getXrefTable().keySet().stream().sorted().forEach(key -> {
            COSObject object = document.getDocument().getObjectFromPool(key);
            if (object != null && object.getObject() instanceof COSDictionary d) {
                found.add(d);
                d.keySet().stream().map(d::getItem).filter(i -> i instanceof COSDictionary)
                        .forEach(i -> found.add((COSDictionary) i));
            }
        });
        return found;
    }
}
