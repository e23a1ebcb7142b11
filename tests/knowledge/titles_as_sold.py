"""Titles and openings as sellers write them, for test_matching: each with the point set meant, or None.

Published titles are named as anyone may name them; the listings round them are made up. `None` rows are the near misses:
other books of the same authors, books about the books, lots, and prose that happens to use the words of a title.
"""

from __future__ import annotations

from string import Template

# Books that have no point set here, most by authors who have one: in every template they must match nothing.
# One a line, "title / author".
OTHERS = """
Dune Messiah / Frank Herbert
Children of Dune / Frank Herbert
Chapterhouse: Dune / Frank Herbert
Dune: House Atreides / Brian Herbert
Foundation's Edge / Isaac Asimov
Foundation and Earth / Isaac Asimov
Prelude to Foundation / Isaac Asimov
I, Robot / Isaac Asimov
The Silmarillion / J.R.R. Tolkien
The Lord of the Rings / J.R.R. Tolkien
The Annotated Hobbit / J.R.R. Tolkien
It / Stephen King
The Dead Zone / Stephen King
Doctor Sleep / Stephen King
The Drawing of the Three / Stephen King
The Last Stand / Nathaniel Philbrick
Sister Carrie / Theodore Dreiser
Carrie's War / Nina Bawden
Dracula's Guest / Bram Stoker
Dracula Unbound / Brian Aldiss
Tender Is the Night / F. Scott Fitzgerald
Tales of the Jazz Age / F. Scott Fitzgerald
Go Set a Watchman / Harper Lee
Cannery Row / John Steinbeck
Journal of a Novel: The East of Eden Letters / John Steinbeck
The Pearl / John Steinbeck
Animal Farm / George Orwell
Dubliners / James Joyce
The Annotated Lolita / Vladimir Nabokov
The Return of Tarzan / Edgar Rice Burroughs
Tarzan and the Ant Men / Edgar Rice Burroughs
The Marvelous Land of Oz / L. Frank Baum
The Cat in the Hat Comes Back / Dr. Seuss
The Cat in the Hat Songbook / Dr. Seuss
Charlie and the Great Glass Elevator / Roald Dahl
White Fang / Jack London
Live and Let Die / Ian Fleming
Main Street / Sinclair Lewis
Franny and Zooey / J.D. Salinger
The Wild Palms / William Faulkner
To Have and Have Not / Ernest Hemingway
The Tale of Benjamin Bunny / Beatrix Potter
The Tale of Mr. Tod / Beatrix Potter
Four Quartets / T.S. Eliot
The Adventures of Tom Sawyer / Mark Twain
The Last Ferry / Ilse Varnum
The Lantern Clerk / Oskar Vane
The Two Noble Kinsmen / William Shakespeare
Second Foundation Companion / Joe Public
Lord Foul's Bane / Stephen R. Donaldson
The Stand Alone Man / Peter King
Home Town / Tracy Kidder
The Shining Company / Rosemary Sutcliff
Good Earth Cookbook / Pearl Baker
Gone with the Wolf / Margaret Mitchell
East of the Sun / John Steinbeck
Babbitt and Bohemian / Sinclair Lewis
Beyond the Stand / Stephen King
Dreamcatcher / Stephen King
The Tommyknockers / Stephen King
Rose Madder / Stephen King
The Hobbit Trivia Book / William MacKay
Bored of the Rings / Henry Beard
Smith of Wootton Major / J.R.R. Tolkien
The Father Christmas Letters / J.R.R. Tolkien
The Dune Encyclopedia / Willis McNelly
Hunters of Dune / Brian Herbert
Whipping Star / Frank Herbert
Soul Catcher / Frank Herbert
The Naked Sun / Isaac Asimov
Robots and Empire / Isaac Asimov
The Currents of Space / Isaac Asimov
Tarzan at the Earth's Core / Edgar Rice Burroughs
A Princess of Mars / Edgar Rice Burroughs
The Beasts of Tarzan / Edgar Rice Burroughs
Nine Stories / J.D. Salinger
Down and Out in Paris and London / George Orwell
The Old Man and the Boy / Robert Ruark
Islands in the Stream / Ernest Hemingway
The Torrents of Spring / Ernest Hemingway
The Moon is Down / John Steinbeck
Horton Hears a Who / Dr. Seuss
The Cat in the Hat Comes Back / Dr Seuss
James and the Giant Peach / Roald Dahl
Ada / Vladimir Nabokov
Sanctuary / William Faulkner
The Wonderful Adventures of Nils / Selma Lagerlof
Glinda of Oz / L. Frank Baum
The Wizard of Oz Collector's Treasury / Jay Scarfone
Ulysses on the Liffey / Richard Ellmann
Exiles / James Joyce
Poor White / Sherwood Anderson
Winesburg Revisited / John Anderson
The Sea-Wolf / Jack London
Call of the Canyon / Zane Grey
Lolita and Other Essays / Jane Doe
The Carrie Diaries / Candace Bushnell
Dune Boy / Edwin Way Teale
Dracula in Love / Karen Essex
Dracula the Un-Dead / Dacre Stoker
Foundation / Peter Ackroyd
Home / Marilynne Robinson
Carrie / Theodore Dreiser
The Stand / Ruth Jones
The Hobbit Party / Jay Richards
The Shining Girls / Lauren Beukes
Casino / Nicholas Pileggi
Royale Casino Games / Ian Black
Fahrenheit 9/11 / Michael Moore
Wise Blood / Flannery O'Connor
The Waste Lands / Stephen King
The Wind in the Willows / Kenneth Grahame
Sand Dune Ecology / Robert Frank
"""

_FIELDS = [
    "$title by $author",
    "$title - $author - 1st Edition, 1st Printing - HC/DJ",
    "$author $title first edition first printing",
    "$TITLE BY $AUTHOR 1ST ED HARDCOVER W/ DUST JACKET RARE!!",
    "$filed. $title",
    "SIGNED $title ($author) First Edition",
    '"$title" $author, hardcover in dj',
    "$title / $author / HCDJ 1st/1st",
    "Vintage Book $title $author Hardcover Dust Jacket BCE",
    "$title a novel by $author",
    "Classic Lit! $title - by $author - ex library",
    "true first $title $author unread",
]
_OPENINGS = [
    "$title. By $author. First edition, first printing. Near fine in a very good jacket.",
    "$filed. $title. New York: first edition. Octavo, original cloth, a nice copy in the jacket.",
    "$author, $title, first printing. Light rubbing to the spine ends, jacket unclipped.",
    "First edition of $title by $author. Book fine, jacket shows a small chip at the crown.",
    "$TITLE BY $AUTHOR. VG/VG. PRICE INTACT. SHIPS BOXED.",
    "$author. $title. Doubleday. Stated first edition. G/G",
    "$author's $title, 1st printing. Tight copy, jacket bright.",
]


def fields(title: str, author: str) -> list[str]:
    return [_fill(template, title, author) for template in _FIELDS]


def openings(title: str, author: str) -> list[str]:
    return [_fill(template, title, author) for template in _OPENINGS]


def _fill(template: str, title: str, author: str) -> str:
    given, _, surname = author.rpartition(" ")
    filed = f"{surname}, {given}" if given else surname
    return Template(template).substitute(title=title, author=author, filed=filed, TITLE=title.upper(), AUTHOR=author.upper())


FIELDS: list[tuple[str, str | None]] = [
    ("Salems Lot Stephen King 1975 Doubleday", "salems-lot"),
    ("Salem's Lot by King, Stephen", "salems-lot"),
    ("Great Gatsby, The. Fitzgerald", "great-gatsby"),
    ("Great Gatsby The Scribners 1925", "great-gatsby"),
    ("The Great Gatsbey by F. Scott Fitzgerald", "great-gatsby"),
    ("The Hobbit Tolkein 1937", "the-hobbit"),
    ("The Hobbit, or There and Back Again. J. R. R. Tolkien", "the-hobbit"),
    ("The Two Towers: Being the Second Part of The Lord of the Rings by J.R.R. Tolkien", "two-towers"),
    ("The Return of the King, Being the Third Part of The Lord of the Rings - Tolkien", "return-of-the-king"),
    ("1984 George Orwell first edition 1949 Secker", "nineteen-eighty-four"),
    ("Charlie & the Chocolate Factory Roald Dahl", "charlie-and-the-chocolate-factory"),
    ("One Flew Over the Cuckoos Nest - Ken Kesey", "one-flew-over-the-cuckoos-nest"),
    ("The Adventures of Huckleberry Finn (Tom Sawyer's Comrade) Mark Twain", "huckleberry-finn"),
    ("To Kill A Mocking Bird Harper Lee first", "to-kill-a-mockingbird"),
    ("Farewell to Arms Hemmingway", "farewell-to-arms"),
    ("For Whom the Bell Tolls (Hemingway, Ernest)", "for-whom-the-bell-tolls"),
    ("Where The Wild Things Are Maurice Sendak 1963 Harper", "where-the-wild-things-are"),
    ("Of Mice & Men John Steinbeck Covici Friede 1937", "of-mice-and-men"),
    ("The Stand: The Complete & Uncut Edition by Stephen King", "the-stand"),
    ("Gone With the Wind", "gone-with-the-wind"),
    ("The Man with the Golden Gun", "man-with-the-golden-gun"),
    ("The Sun Also Rises, first edition", "sun-also-rises"),
    ("Carrie", "carrie"),
    # taken apart, cut short, among shop words
    ("Hemingway, Ernest. Bell Tolls (For Whom the)", "for-whom-the-bell-tolls"),
    ("Gatsby (The Great), Fitzgerald", "great-gatsby"),
    ("Old Man & Sea, Hemingway", "old-man-and-the-sea"),
    ("Gatsby, green cloth, Scribners", "great-gatsby"),
    ("Mockingbird, Harper Lee", "to-kill-a-mockingbird"),
    ("Cuckoos Nest kesey hb", "one-flew-over-the-cuckoos-nest"),
    ("Confederacy of Dunces LSU 1980", "confederacy-of-dunces"),
    ("Charlie & Chocolate Factory early US", "charlie-and-the-chocolate-factory"),
    ("GRAPES OF WRATH not the club edition", "grapes-of-wrath"),
    ("Huckleberry Finn, Twain, worn", "huckleberry-finn"),
    ("Peter Rabbit Potter green boards", "tale-of-peter-rabbit"),
    ("carrie S. King doubleday", "carrie"),
    ("Dune 6th printing Chilton red", "dune"),
    ("winesburg, sherwood anderson", "winesburg-ohio"),
    ("Fahrenheit 451 Bradbury Ballantine red boards", "fahrenheit-451"),
    ("Hungry Caterpillar, Carle", "very-hungry-caterpillar"),
    # near misses of those: words more, words less, other authors, other books of the author, prose
    ("Gatsby's Girl by Caroline Preston", None),
    ("Great Gatsby cooking", None),
    ("Gatsby Magazine summer issue", None),
    ("The Great Railway Bazaar - Theroux", None),
    ("Old Man and the Boy, Ruark", None),
    ("The Old Man, William Faulkner", None),
    ("Sea Wolf, Jack London", None),
    ("The Bell Jar - Sylvia Plath", None),
    ("For Whom the Cow Bell Tolls cartoon", None),
    ("Mockingbird Songs: my friendship with Harper Lee", None),
    ("A Mockingbird Christmas", None),
    ("Nest of Cuckoos, birdwatching", None),
    ("Flew, Antony: God and Philosophy", None),
    ("Dunces and Scholars", None),
    ("A Confederacy of Silence by Richard Rubin", None),
    ("Chocolate Factory, a history of Cadbury", None),
    ("Charlie Chaplin, My Autobiography", None),
    ("The Wrath of Grapes, wine essays", None),
    ("Wrath by John Sandford", None),
    ("Huckleberry Hound annual 1961", None),
    ("Mark Twain's Autobiography, Harper, 2 vols", None),
    ("Peter Pan, Barrie", None),
    ("The Rabbit Problem", None),
    ("Beatrix Potter, Tale of Pigling Bland", None),
    ("Carrie Fisher, Wishful Drinking", None),
    ("King Carrie of the Zulus", None),
    ("Sand Dune plants, red cover", None),
    ("Ohio River navigation charts", None),
    ("Winesburg Revisited, Anderson studies", None),
    ("Fahrenheit thermometers", None),
    ("The Hungry Ghosts, Joyce Carol Oates", None),
    ("Caterpillar tractor manual", None),
    ("Sun Also Sets (parody)", None),
    ("The Sun and the Moon Also", None),
    ("Farewell My Lovely, Raymond Chandler", None),
    ("A Farewell to Kings, songbook", None),
    ("Call of Cthulhu, Lovecraft", None),
    ("Wild Animals I Have Known", None),
    ("Wind in the Willows", None),
    ("Gone, by Michael Grant", None),
    ("Eden, Stanislaw Lem", None),
    ("East Wind, West Wind, Buck", None),
    ("Earth, Emile Zola", None),
    ("Good Omens, Pratchett & Gaiman", None),
    ("Royale, Battle, by Takami", None),
    ("Golden Gun collector's guide", None),
    ("Man with the Golden Arm, Algren", None),
    ("Lord of the Dance; Flies of Britain", None),
    ("Flies for Trout: 1954 fishing lures", None),
    ("Mice and Rats as pets", None),
    ("Rings of Saturn, Sebald", None),
    ("Two Towers Hotel brochure", None),
    ("Return of the Native, Hardy", None),
    ("King's Return by Stephen Baxter", None),
    ("Foundation Garments 1950s catalogue", None),
    ("Second Foundation of Rome: history", None),
    ("Shining Path, Peru", None),
    ("The Waste Lands (Stephen King)", None),
    ("Land of Waste: landfill", None),
    ("Things Fall Apart, Achebe", None),
    ("Wild Things, Carole Wilkinson", None),
    ("Wonderful Wizards, party magic", None),
    ("Oz, Amos: My Michael", None),
    ("This Side of Brightness, McCann", None),
    ("Paradise by Toni Morrison", None),
    ("Beautiful Losers, Cohen", None),
    ("The Damned United", None),
    ("Sound of the Fury of War", None),
    ("Dying for Chocolate, Davidson", None),
    ("George Apley's diary? A pastiche", None),
    # near misses
    ("Dune Messiah by Frank Herbert, first edition", None),
    ("Children of Dune - Frank Herbert", None),
    ("God Emperor of Dune Frank Herbert signed", None),
    ("Heretics of Dune by Frank Herbert", None),
    ("Chapterhouse: Dune by Frank Herbert", None),
    ("Dune: House Atreides by Brian Herbert and Kevin J. Anderson", None),
    ("The Road to Dune Frank Herbert", None),
    ("Foundation's Edge by Isaac Asimov 1st", None),
    ("Foundation and Earth Isaac Asimov", None),
    ("Prelude to Foundation by Isaac Asimov", None),
    ("Forward the Foundation - Asimov", None),
    ("The Foundation Trilogy Isaac Asimov BCE", None),
    ("The Silmarillion J.R.R. Tolkien first edition", None),
    ("Unfinished Tales by J.R.R. Tolkien", None),
    ("The Lord of the Rings J.R.R. Tolkien one volume India paper", None),
    ("The Hobbit Companion David Day", None),
    ("The Annotated Hobbit J.R.R. Tolkien Douglas Anderson", None),
    ("The Fellowship of the Ring, The Two Towers, The Return of the King - Tolkien", None),
    ("Christine by Stephen King", None),
    ("It by Stephen King first", None),
    ("Doctor Sleep Stephen King (sequel to The Shining)", None),
    ("Night Shift by Stephen King", None),
    ("The Stand-In by Deborah Moggach", None),
    ("Carrie's War by Nina Bawden", None),
    ("Sister Carrie by Theodore Dreiser", None),
    ("Home by Toni Morrison", None),
    ("Stand on Zanzibar John Brunner", None),
    ("The Making of The Shining", None),
    ("Dracula's Guest Bram Stoker 1914", None),
    ("The Jewel of Seven Stars by Bram Stoker", None),
    ("Dracula, My Love by Syrie James", None),
    ("Anno Dracula Kim Newman", None),
    ("The Great Gatsby: A Graphic Novel adapted from F. Scott Fitzgerald", None),
    ("Tender is the Night F. Scott Fitzgerald", None),
    ("The Last Tycoon - Fitzgerald", None),
    ("Go Set a Watchman by Harper Lee", None),
    ("Cannery Row John Steinbeck first", None),
    ("Sweet Thursday by John Steinbeck", None),
    ("The Winter of Our Discontent Steinbeck", None),
    ("Journal of a Novel: The East of Eden Letters John Steinbeck", None),
    ("Animal Farm by George Orwell", None),
    ("1984 Honda Accord owner's manual", None),
    ("Finnegans Wake James Joyce", None),
    ("Dubliners by James Joyce", None),
    ("Ulysses S. Grant: Personal Memoirs", None),
    ("Pale Fire Vladimir Nabokov", None),
    ("The Annotated Lolita by Vladimir Nabokov", None),
    ("Reading Lolita in Tehran by Azar Nafisi", None),
    ("The Return of Tarzan Edgar Rice Burroughs", None),
    ("Tarzan the Terrible by Edgar Rice Burroughs", None),
    ("Son of Tarzan - Burroughs", None),
    ("The Marvelous Land of Oz L. Frank Baum", None),
    ("Ozma of Oz by L. Frank Baum", None),
    ("The Cat in the Hat Comes Back! Dr. Seuss", None),
    ("The Cat in the Hat Beginner Book Dictionary Dr. Seuss", None),
    ("Green Eggs and Ham by Dr. Seuss", None),
    ("Charlie and the Great Glass Elevator Roald Dahl", None),
    ("White Fang by Jack London", None),
    ("The Call of the Wild and White Fang by Jack London", None),
    ("Live and Let Die Ian Fleming first edition", None),
    ("Goldfinger - Ian Fleming", None),
    ("Arrowsmith by Sinclair Lewis", None),
    ("Main Street Sinclair Lewis", None),
    ("Franny and Zooey J.D. Salinger", None),
    ("Absalom, Absalom! William Faulkner", None),
    ("Light in August by William Faulkner", None),
    ("Across the River and Into the Trees Ernest Hemingway", None),
    ("Death in the Afternoon by Ernest Hemingway", None),
    ("Lot of 3 Steinbeck: East of Eden, The Grapes of Wrath, Cannery Row", None),
    ("The Good Earth Trilogy (Sons, A House Divided) Pearl S. Buck", None),
    ("Sons by Pearl S. Buck", None),
    ("The Tale of Benjamin Bunny Beatrix Potter", None),
    ("The Tale of Mrs. Tiggy-Winkle by Beatrix Potter", None),
    ("The Inheritors William Golding", None),
    ("Four Quartets T.S. Eliot", None),
    ("Murder in the Cathedral by T.S. Eliot", None),
    ("Dandelion Wine Ray Bradbury", None),
    ("The Martian Chronicles by Ray Bradbury", None),
    ("Sometimes a Great Notion Ken Kesey", None),
    ("In the Night Kitchen Maurice Sendak", None),
    ("The Adventures of Tom Sawyer Mark Twain 1876", None),
    ("A Connecticut Yankee in King Arthur's Court Mark Twain", None),
    ("Building a Foundation: Masonry for Beginners", None),
    ("The Shining Mountains by Dale Van Every", None),
    ("A Field Guide to Dune Grasses", None),
    ("The Harbor Clerk by Ilse Varnum, first edition", None),
    ("The Neon Bible by John Kennedy Toole", None),
]

OPENINGS: list[tuple[str, str | None]] = [
    ("Our copy of The Great Gatsby is a first printing with the points. Fitzgerald's masterpiece.", "great-gatsby"),
    ("KING, Stephen. 'Salem's Lot. Garden City: Doubleday, 1975. First edition.", "salems-lot"),
    ("TOLKIEN, J. R. R. The Two Towers. London: George Allen & Unwin, 1954. First impression.", "two-towers"),
    # near misses
    ("Signed by Stephen King. It will make a stand in any collection. From a smoke-free home.", None),
    ("Frank Herbert. Dune Messiah. Putnam, 1969. First edition. The sequel to Dune.", None),
    ("The Silmarillion. J.R.R. Tolkien. By the author of The Hobbit and The Lord of the Rings. First edition.", None),
    ("Stephen King. The Dead Zone. Viking, 1979. The fifth novel by the author of Carrie, The Shining, and The Stand.", None),
    ("A lovely book on the home, the garden and the good earth. Pictorial boards, no jacket.", None),
    ("Three books by Stephen King: Carrie, The Shining, and The Stand. All book club editions.", None),
    ("Cannery Row. John Steinbeck. The author also wrote East of Eden.", None),
    ("The Foundation for the Study of Maps issued this atlas. Boards rubbed. Introduction by Isaac Asimov.", None),
    ("Poems. T.S. Eliot. Includes The Waste Land and other poems, first collected edition.", None),
    ("Jacket has a shining finish. Stephen King's Christine, Viking, 1983.", None),
    ("Isaac Asimov. Foundation's Edge. Doubleday, 1982. Fourth of the Foundation series.", None),
    ("Isaac Asimov, I, Robot. Gnome Press. Jacket advertises Foundation.", None),
    ("A nice copy. Stamp of the Carrie Nation Memorial Library. King James Bible, small print.", None),
    ("The dust jacket lists Carrie, 'Salem's Lot and The Shining. Stephen King, The Stand... NOT included.", None),
    ("Vintage beach photographs: dune and shore. By Walter Herbert Frank.", None),
    ("Brian Herbert. Dune: House Harkonnen. First edition, signed.", None),
    ("Ernest Hemingway: A Life Story by Carlos Baker. Contains a chapter on The Old Man and the Sea.", None),
    ("The Last Ferry. Ilse Varnum. Tamarack & Vane, 1984. First edition.", None),
    ("Harper Lee interest: program for the play To Kill a Mockingbird, Monroeville.", None),
    ("Pearl S. Buck. Sons. John Day, 1932. Sequel to The Good Earth.", None),
    ("Books by John Steinbeck wanted. We buy The Grapes of Wrath and East of Eden.", None),
]
