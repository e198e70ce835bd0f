// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;

/**
 * Vectors of the open formats: VCD by IEEE 1364, WAV by the RIFF description, records by RFC 4180, blocks by IEEE 488.2.
 * The bytes and what they mean were made from those descriptions.
 */
class FormatVectorsTest {

    private static final String VCD_HEAD = """
            $date 2001-01-01 $end
            $version bench $end
            $timescale 10 ns $end
            $scope module top $end
            $var wire 1 ! clk $end
            $var wire 8 " data [7:0] $end
            $var real 64 # vdd $end
            $upscope $end
            $enddefinitions $end
            """;
    private static final String VCD = VCD_HEAD + """
            #0
            $dumpvars
            0!
            bx "
            r4.98 #
            $end
            #5
            1!
            b101 "
            #10
            0!
            bz000001 "
            #15
            x!
            """;

    private static Imported read(String text) throws IOException {
        return CaptureReader.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), ImportOptions.none());
    }

    private static byte[] hex(String text) {
        String[] words = text.split(" ");
        byte[] bytes = new byte[words.length];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) Integer.parseInt(words[i], 16);
        }
        return bytes;
    }

    private static String changes(DigitalChannel channel) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < channel.size(); i++) {
            all.add(Math.round(channel.at(i) * 1e9) + ":" + channel.state(i));
        }
        return String.join(" ", all);
    }

    @Test
    void vcd_fourStatesVectorsReals_areRead() throws IOException {
        Capture c = read(VCD).capture();
        assertEquals("0:0 50:1 100:0 150:x", changes(c.digital("top.clk").orElseThrow()));
        assertEquals("0:xxxxxxxx 50:00000101 100:zz000001", changes(c.digital("top.data").orElseThrow()));
        Channel vdd = c.channel("top.vdd").orElseThrow();
        assertEquals(4.98, vdd.samples().get(0), 0);
        assertEquals(0, vdd.times().at(0), 0);
        assertEquals(150e-9, c.digital().get(0).end(), 1e-18);
        assertEquals("0:x 50:1",
                changes(c.digital("top.data").orElseThrow().lines().get(7)));
    }

    @Test
    void vcd_shortVectors_extendToTheLeft() throws IOException {
        Capture c = read("$timescale 1us $end\n$scope module t $end\n$var wire 4 a bus $end\n$upscope $end\n"
                + "$enddefinitions $end\n#0\nb1 a\n#2\nbx a\n#3\nbz1 a\n#4\nb0 a\n").capture();
        assertEquals("0:0001 2000:xxxx 3000:zzz1 4000:0000", changes(c.digital("t.bus").orElseThrow()));
    }

    static List<Arguments> wrongChanges() {
        return List.of(Arguments.of("#0\nbz0000001 \" \n#1\nbz00000001 \"",
                "row 13: \"bz00000001\" has 9 states, where top.data has 8 lines"),
                Arguments.of("#0\n1?",
                "row 11: no variable has the code \"?\"; one that a $var defines was expected"),
                Arguments.of("#10\n1!\n#5\n0!",
                "row 12: the time goes back from #10 to #5, where rising times were expected"),
                Arguments.of("#0\nq!",
                "row 11: \"q!\" is no value change; one such as 0!, b0101 ! or #10 was expected"),
                Arguments.of("#1a",
                "row 10: \"#1a\" is no time; # and a whole number were expected"),
                Arguments.of("#0\nb012 \"",
                "row 11: \"b012\" is no vector; b and states 0, 1, x or z were expected"),
                Arguments.of("#0\nrfive #",
                "row 11: \"rfive\" is no real value; one such as r1.5 was expected"),
                Arguments.of("#0\nr1.5 !",
                "row 11: a real value is given for top.clk, where logic states were expected"));
    }

    @ParameterizedTest
    @MethodSource("wrongChanges")
    void vcd_wrongChange_isNamedByItsLine(String body, String message) {
        String text = VCD_HEAD + body;
        assertEquals(message, assertThrows(CaptureException.class, () -> read(text)).getMessage());
    }

    static List<Arguments> wrongDefinitions() {
        return List.of(Arguments.of("$timescale 1us $end\n#0\n",
                "row 2: \"#0\" stands before $enddefinitions, where a definition such as $var was expected"),
                Arguments.of("$timescale 1us $end\n",
                "row 2: the file ends before $enddefinitions, which was expected"),
                Arguments.of("$timescale 3us $end\n",
                "row 1: \"3us\" is no time scale; 1, 10 or 100 of s, ms, us, ns, ps or fs was expected"),
                Arguments.of("$var wire 1 $end\n",
                "row 1: \"$var wire 1\" is no variable; its kind, width, code and name were expected"),
                Arguments.of("$comment no end",
                "row 1: $comment is not closed; $end was expected"),
                Arguments.of("$enddefinitions $end\n",
                "row 1: the definitions end without a $var; at least one was expected"));
    }

    @ParameterizedTest
    @MethodSource("wrongDefinitions")
    void vcd_wrongDefinition_isNamedByItsLine(String text, String message) {
        assertEquals(message, assertThrows(CaptureException.class, () -> read(text)).getMessage());
    }

    private static final String WAV16 = "52 49 46 46 2c 00 00 00 57 41 56 45 66 6d 74 20 10 00 00 00 01 00 01 00 40 1f 00 00"
            + " 80 3e 00 00 02 00 10 00 64 61 74 61 08 00 00 00 00 00 00 40 00 80 ff 7f";
    private static final String WAV8 = "52 49 46 46 28 00 00 00 57 41 56 45 66 6d 74 20 10 00 00 00 01 00 01 00 40 1f 00 00"
            + " 40 1f 00 00 01 00 08 00 64 61 74 61 03 00 00 00 00 80 ff 00";

    private static Imported wav(byte[] bytes, ImportOptions options) throws IOException {
        return CaptureReader.read(new ByteArrayInputStream(bytes), options);
    }

    @Test
    void wav_16Bits_areSharesOfFullScale() throws IOException {
        Channel c = wav(hex(WAV16), ImportOptions.none()).capture().channels().get(0);
        assertArrayEquals(new double[] {0, 0.5, -1, 0.999969482421875}, c.samples().toArray(), 0);
        assertEquals(1.0 / 8000, c.times().interval(), 0);
        assertEquals("", c.unit());
        assertEquals(1.0 / 32768, c.resolution(), 0);
        Channel volts = wav(hex(WAV16), ImportOptions.none().withScale(2)).capture().channels().get(0);
        assertEquals("V", volts.unit());
        assertEquals(-2, volts.samples().get(2), 0);
    }

    @Test
    void wav_8BitsOddLength_areCentredAndPadded() throws IOException {
        Channel c = wav(hex(WAV8), ImportOptions.none()).capture().channels().get(0);
        assertArrayEquals(new double[] {-1, 0, 0.9921875}, c.samples().toArray(), 0);
    }

    private static byte[] made(int tag, int channels, int bits, byte[] data) {
        java.nio.ByteBuffer b = java.nio.ByteBuffer.allocate(44 + data.length).order(java.nio.ByteOrder.LITTLE_ENDIAN);
        b.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + data.length);
        b.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16).putShort((short) tag).putShort((short) channels);
        b.putInt(48000).putInt(48000 * channels * bits / 8).putShort((short) (channels * bits / 8)).putShort((short) bits);
        return b.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(data.length).put(data).array();
    }

    @Test
    void wav_floatAnd24BitsAndStereo_areRead() throws IOException {
        byte[] f = java.nio.ByteBuffer.allocate(8).order(java.nio.ByteOrder.LITTLE_ENDIAN).putFloat(0.25f).putFloat(-1.5f).array();
        assertArrayEquals(new double[] {0.25, -1.5},
                wav(made(3, 1, 32, f), ImportOptions.none()).capture().channels().get(0).samples().toArray(), 0);
        byte[] p = {0, 0, (byte) 0x80, (byte) 0xff, (byte) 0xff, 0x7f};
        Capture stereo = wav(made(1, 2, 24, p), ImportOptions.none()).capture();
        assertEquals(List.of("left", "right"), stereo.names());
        assertEquals(-1, stereo.channels().get(0).samples().get(0), 0);
        assertEquals(8388607.0 / 8388608, stereo.channels().get(1).samples().get(0), 0);
    }

    @Test
    void wav_damaged_isNamedByItsByte() {
        byte[] other = hex(WAV16);
        other[8] = 'A';
        assertTrue(message(other).startsWith("byte 8: \"AAVE\" stands where WAVE was expected"));
        byte[] kind = hex(WAV16);
        kind[20] = 17;
        assertTrue(message(kind).startsWith("byte 12: the samples are of kind 17 with 16 bits"));
        assertEquals("byte 36: the file ends, where a data chunk was expected", message(Arrays.copyOf(hex(WAV16), 38)));
        assertEquals("byte 45: there is no sample, where at least one was expected", message(Arrays.copyOf(hex(WAV16), 45)));
        assertTrue(message(Arrays.copyOf(hex(WAV16), 10)).startsWith("the file ends inside its head"));
    }

    private static String message(byte[] bytes) {
        return assertThrows(CaptureException.class, () -> wav(bytes, ImportOptions.none())).getMessage();
    }

    @Test
    void block_lengths_areObeyed() throws IOException {
        assertArrayEquals(new byte[] {1, 2, 10, 4, 5}, InstrumentBlock.payload(hex("23 31 35 01 02 0a 04 05 0a")));
        for (String[] head : new String[][] {{"#44000", "4000"}, {"#800001000", "1000"}, {"#0", "37"}}) {
            byte[] start = head[0].getBytes(StandardCharsets.US_ASCII);
            byte[] all = Arrays.copyOf(start, start.length + Integer.parseInt(head[1]) + 1);
            Arrays.fill(all, start.length, all.length - 1, (byte) 200);
            all[all.length - 1] = '\n';
            assertEquals(Integer.parseInt(head[1]), InstrumentBlock.payload(all).length);
            Channel c = CaptureReader.read(new ByteArrayInputStream(all), ImportOptions.none().withInterval(1e-6).withScale(0.02))
                    .capture().channels().get(0);
            assertEquals(4, c.samples().get(c.size() - 1), 1e-12);
        }
        assertTrue(assertThrows(CaptureException.class, () -> InstrumentBlock.payload("#A5".getBytes(StandardCharsets.US_ASCII)))
                .getMessage().startsWith("byte 1: "));
        assertEquals("byte 7: the block ends after 2 bytes, where 4 were expected", assertThrows(CaptureException.class,
                () -> InstrumentBlock.payload("#3004ab".getBytes(StandardCharsets.US_ASCII))).getMessage());
    }

    @Test
    void records_areThoseOfRfc4180() throws CaptureException {
        assertEquals(List.of(List.of("a", "b", "c"), List.of("1", "2", "3")), DelimitedRecords.parse("a,b,c\r\n1,2,3\r\n", ','));
        assertEquals(List.of(List.of("a", "b,1", "c")), DelimitedRecords.parse("a,\"b,1\",c", ','));
        assertEquals(List.of(List.of("he said \"hi\"", "x")), DelimitedRecords.parse("\"he said \"\"hi\"\"\",x\r\n", ','));
        assertEquals(List.of(List.of("line1\r\nline2", "z")), DelimitedRecords.parse("\"line1\r\nline2\",z\r\n", ','));
        assertEquals(List.of(List.of(" a ", " b ")), DelimitedRecords.parse(" a , b \r\n", ','));
        assertEquals(List.of(List.of("", "", "")), DelimitedRecords.parse(",,\r\n", ','));
        assertEquals("row 1: a quotation mark is opened and never closed; a closing one was expected",
                assertThrows(CaptureException.class, () -> DelimitedRecords.parse("\"unterminated\r\n", ',')).getMessage());
    }
}
