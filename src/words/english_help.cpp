#include "words/commands_says.hpp"

namespace words {

std::string_view help_in_english() {
  return R"(Slabside: making watercolour paint by touch, with a record that can be made again.

slabside [--studio DIR] [--size WxH] [--mm WxH] [--hand left|right] [--night] [--full-screen]
         [--as-studio]           the window, on this studio (else ~/Slabside); size in pixels
                                 (1280x800), and in mm as it is on the real display;
                                 --as-studio takes the folder for the studio although another
                                 one, or a disk that is not in now, was there before
slabside FILE [--size WxH] [--mm WxH] [--hand left|right] [--night] [--full-screen]
                                 the window, on a packed studio: it is unpacked beside ~/Slabside,
                                 the first time that it is opened
slabside picture today|shelf|binder|plan|slab|pans|photos|book|tablet --out FILE.png [--studio DIR] [--batch BATCH]
                 [--at TIME] [--taps "PAD; PAD ..."] [--size WxH] [--mm WxH] [--hand left|right]
                 [--night]
                                 a screen without a window, as it was at a time (else now), after
                                 taps on those pads; no file is overwritten
slabside ... --language de|en    the window and every command in this language; else in the one
                                 that was chosen on “this tablet” (the window alone) or that the
                                 system is set to. “pseudo” writes every English word a third
                                 longer

slabside list  [--studio DIR]    all batches, oldest first
slabside show  BATCH [--studio DIR] [--json]
                                 one batch as numbers: by id, by name, or “last”
slabside range [PIGMENT] [--studio DIR] [--json]
                                 what each pigment wants, as the feel notes of all batches have
                                 taught it; of one: by card, name or Colour Index name
slabside tell  --out FILE.json [--studio DIR]
                                 what the feel notes have taught, for another studio: pigments of
                                 the catalogue and the hand, no batch, no recipe, nobody's name
slabside hear  FILE.json | --no-more [--studio DIR]
                                 what another studio told, to begin from; asked for each time,
                                 and your own notes outweigh it
slabside bring FILE.csv [--take] [--studio DIR] [--column C=ROLE[:UNIT] ...] [--binder CARD]
               [--decimal comma|point] [--dates day|month] [--separator comma|semicolon|tab|bar]
               [--spoons metric|us|uk|australia] [--new-pigments] [--mine]
                                 old notes, a table of any spreadsheet's, as recipes: shows what
                                 was understood and every cell that was not; --take puts them on
                                 the shelf. A column is skip, name, pigment, amount, binder, honey,
                                 glycerin, water, wetting_aid, date or note; --new-pigments makes
                                 cards for pigments that the shelf has not
slabside sheet  --batch BATCH [--studio DIR] [--out FILE.html]
                                 the batch sheet, to print on A4 or Letter. Without --out this
                                 and the next ones go to standard output; no file is overwritten.
                                 They leave out the amounts of recipes marked as mine, but for
                                 --with-recipes; labels bear no amounts at all
slabside labels --batch BATCH [--studio DIR] [--count N] [--mm 38x21] [--sheet a4|letter]
                [--line TEXT] [--out FILE.html|FILE.svg]
                                 labels for its pans, in true millimetres; without --count a sheet;
                                 --line is one of your own on each, as whom to ask
slabside labels --binder CARD [--studio DIR] [--count N] [--mm 60x38] [--sheet a4|letter]
                [--line TEXT] [--out FILE.html]
                                 labels for a jar of binder, by its card or name, as while it is made:
                                 parts, preservative, made on, until when it keeps
slabside paints [--studio DIR] [--out FILE.html]
                                 all paints by hue and lightness, with what is left of each
slabside card  --batch BATCH [--studio DIR] [--sheet a4|letter] [--out FILE.html]
                                 a swatch card to print and paint on, with bare paper, two greys
                                 and a scale
slabside table  [--batch BATCH] [--totals] [--studio DIR] [--out FILE.csv]
                                 every addition, or with --totals what went in of each material.
                                 Names that a spreadsheet would compute get an apostrophe in front
slabside check DIR               look for damage in a studio's files; changes nothing. Exit status
                                 0 whole, 1 damage, 2 it cannot be read at all
slabside mend  [--studio DIR] --out NEWDIR
                                 a repaired copy of a studio, and what could not be had back;
                                 the studio stays as it is. Exit status 0 the copy says all that
                                 the studio did, 1 something is lost, or is wrong in the copy too
slabside pack  [--studio DIR] --out FILE.slabside
                                 sessions and photos as one file (a zip), to be carried elsewhere
slabside unpack FILE.slabside --out NEWDIR
                                 a studio from such a file; nothing is ever written over
slabside photo FILE --batch BATCH --of dot|swatch|pan|slab [--studio DIR]
                                 keeps a JPEG or PNG with a batch
slabside colour PHOTO [--swatch X,Y,W,H] [--paper X,Y,W,H] [--beside X,Y,W,H]
                [--against PHOTO|BATCH] [--batch BATCH] [--studio DIR]
                                 the colour of a swatch from its photo, with bare paper around it,
                                 and how sure that is; of two, how far they are apart. Best are
                                 both swatches side by side on one photo. Regions are in pixels;
                                 without them they are looked for. BATCH: its swatch, as read last.
                                 --batch keeps the photo with a batch, whose paint has the colour
                                 of the first swatch from now on
slabside play  SCRIPT --studio DIR [--fallback DIR] [--report] [--pace N] [--fault F] [--watch]
                                 taps from a script, on the real bench, without a window;
                                 --watch shows them in one
slabside help                    this
slabside --version               which version this is, and of which session format

Exit status: 0 done, 1 something is wrong, 2 the command was not understood.

A script has one thing to do in a line; # begins a comment.
  at 2026-11-20T14:02:00+01:00   sets the clock       seed 7    the same ids each time
  display 218x136 [right]        in mm                session c41e08d5, device a83f
  tap PAD [x10] [every 1.5]      seconds, from press to press
  type 12.5                      digits and “enter” on the number pad
  write name TEXT                into a field: name, search, note, batch_name, label_line, card_name,
                                 card_lot, made_on, keep_until, currency, jar_lot, bought_on
  wait 90 | wait 5m | wait 2h
  down PAD, slide, up            one touch by hand
  stop                           end at once, as if killed
--report prints “saved N” when line N lies on the disk, and the window, which takes --report and
--fault too, “ready”, “unsaved N” and “closed”; --pace 50 plays 50 times faster than
life, without it as fast as it goes; --fallback is where lines go while the studio fails.
--fault slow:150, silent, fail:7, fail-from:7, fail-write:3:EIO … spoils the studio's disk.
)";
}

}
