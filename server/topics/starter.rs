//! The topics a steward may start with, in words of our own: general, and below the
//! supplier's safety data sheet, local rules and licensed practice.
//!
//! Common practice, no source: gloves and tongs always, eye protection often skipped at
//! the tray though it should not be; many small splashes over years make a
//! sensitisation, so that their count matters more than any one of them; a couple of
//! minutes of airing about every fifteen where there is no fan. The fifteen minutes of
//! rinsing are the flush that ANSI/ISEA Z358.1 equipment is built for.

use super::{Required, Topic, Trait};

/// A topic of the starter set.
#[derive(Clone, Copy, Debug)]
pub struct Starter {
    /// What it is about.
    pub title: &'static str,
    /// What is to be known.
    pub body: &'static str,
    /// The traits that ask for it; none asks for it always.
    pub traits: &'static [Trait],
}

impl Starter {
    /// Of whom it is required.
    #[must_use]
    pub fn required(&self) -> Required {
        match self.traits {
            [] => Required::Always,
            traits => Required::ByTrait(traits.to_vec()),
        }
    }
}

/// Those whose title a room does not have.
#[must_use]
pub fn missing(there: &[Topic]) -> Vec<&'static Starter> {
    let is_there = |each: &&Starter| there.iter().any(|topic| topic.title == each.title);
    SET.iter().filter(|each| !is_there(each)).collect()
}

/// The set.
pub const SET: [Starter; 11] = [
    Starter {
        title: "Gloves and tongs",
        body: "Hands stay out of the liquids. Move prints with tongs, a pair for each tray, and \
            put each pair back where it came from.\n\n\
            Wear gloves at the wet bench, tongs or not, and whenever you pour, top up, wash trays \
            or wipe. Gloves must not be skipped. Which material holds which chemical back, and for \
            how long, stands in section 8 of the supplier’s safety data sheet.\n\n\
            Look for holes before you put them on. Rinse them before you take them off, take them \
            off without touching the outside, then wash your hands. A wet glove carries the bath \
            to whatever it touches: a phone, a tap, a door, your face.",
        traits: &[],
    },
    Starter {
        title: "Eye protection",
        body: "Wear eye protection whenever you pour or measure a concentrate, mix, top up, tip a \
            tray out or clean up a spill. Spectacles are none: they leave the sides open.\n\n\
            At the tray it is often skipped, and should not be. A print that slips back into the \
            bath splashes at the height of a bent face.\n\n\
            Contact lenses hold a splash against the eye. If you wear them, say so to the steward \
            who inducts you, and know the way to the eyewash.",
        traits: &[],
    },
    Starter {
        title: "Sensitisers and long exposure",
        body: "Some of what stands here can make you allergic. That hardly ever comes of one bad \
            day: it comes of many small splashes over years. So it is the count that matters, and \
            each one that you spare yourself.\n\n\
            Once somebody is sensitised, very little is enough, and as a rule it does not go away \
            again. It can begin on the skin or in the airways, and with things that nobody here \
            had trouble with before.\n\n\
            Weak solutions count too: that a working solution carries no warning does not mean \
            that it cannot do it. Itching, redness, cracked skin, a cough or a tight chest that \
            comes back with the work is a reason to stop, to tell a steward, and to see a doctor \
            with the safety data sheet in hand.",
        traits: &[Trait::Sensitiser],
    },
    Starter {
        title: "Acids and alkalis into water",
        body: "The acid goes into the water, slowly, while you stir: never water into acid. A \
            strong alkali goes into the water too, and the water is cold. Both can boil up and \
            throw liquid out when it is done the other way round.\n\n\
            Measure the water first. Pour away from yourself, low over the vessel, with gloves and \
            eye protection on. Never heat a concentrate, and never mix two concentrates.\n\n\
            Acids and alkalis burn skin and eyes; an alkali often does not hurt at first. A bath \
            that smells sharp is in the air that you breathe. Glacial acid and strong alkali are \
            for those only whom a steward has named.",
        traits: &[Trait::AcidOrAlkali],
    },
    Starter {
        title: "Airing",
        body: "Run the fan before the first tray is uncovered and until the last one is covered. \
            If the fan stops, cover the trays, leave, and air the room.\n\n\
            Without a fan, open up for a couple of minutes about every fifteen. That is a habit, \
            and no measured exhaust.\n\n\
            A tray that nobody prints through stays covered. If a smell is new, sharp or like bad \
            eggs, do not look for where it comes from: everyone goes out, then call a steward. \
            Whoever has asthma or is pregnant speaks with a doctor before working here.",
        traits: &[],
    },
    Starter {
        title: "Spills",
        body: "Say it aloud: others may be about to step into it. White light on, as soon as \
            paper allows, and at once where somebody could be hurt.\n\n\
            A little of a working solution: gloves and eye protection on, take it up with the \
            cloths of the spill kit, wipe twice with water. A concentrate, a powder, more than you \
            can take up with one cloth, or anything you cannot name: keep everyone away and fetch \
            a steward.\n\n\
            Do not pour one thing on another to make it go away. Used cloths go into the bag of \
            the spill kit. What dries on a floor becomes dust, so that a spill is over only when \
            the floor has been wiped clean.",
        traits: &[],
    },
    Starter {
        title: "Eyewash",
        body: "Know where it is and go there once with closed eyes, before you need it. Nothing \
            ever stands in front of it.\n\n\
            A splash in the eye: to the running water at once, lids held open, rinse for at least \
            15 minutes by the clock. Take contact lenses out while you rinse, if that is easy. \
            Somebody else calls for help meanwhile and finds the safety data sheet.\n\n\
            Go on to a doctor even where it has stopped hurting, and take the sheet with you.",
        traits: &[],
    },
    Starter {
        title: "First help",
        body: "On the skin: wet clothes off, rinse with running water, at least 15 minutes where \
            it was a concentrate. In the eye: eyewash at once. Breathed in: out into fresh air, \
            sit up, call for help. Swallowed: rinse the mouth, do not make yourself sick, call the \
            poison centre.\n\n\
            The page Emergency says the same, with the numbers and the address of this room. It \
            is one tap away on every page and on the screens, and it is printed on the bench \
            sheet.\n\n\
            Tell a steward of every splash, of small ones too. It is for the count, and never for \
            blame.",
        traits: &[],
    },
    Starter {
        title: "Labels and data sheets",
        body: "Nothing here stands without a label: what it is, how strong, since when, until \
            when. Liquid without one is unknown: do not use it, do not pour it away, tell a \
            steward.\n\n\
            The supplier’s safety data sheet describes the concentrate. It says what it can do to \
            you, which gloves to wear, and what to do when something has gone wrong. It wins over \
            whatever this program reckons, and so do local rules.\n\n\
            Never keep chemicals in bottles or cups that food or drink came in, and never eat or \
            drink in the darkroom.",
        traits: &[],
    },
    Starter {
        title: "Waste and the drain",
        body: "Nothing goes down the drain here unless a steward has said so for that very bath. \
            Used baths go into the container that is named for them.\n\n\
            Some baths must never meet, in a container least of all: acid with fixer, sulfide or \
            bleach can give off gas that kills. Read the label of the container, and ask where \
            you are not sure.\n\n\
            Household bleach has no use at this bench. Who tips a tray out notes it, wears gloves \
            and eye protection, and leaves the container closed.",
        traits: &[],
    },
    Starter {
        title: "Emergencies",
        body: "Know the two ways out, the light switch, the fan switch, the eyewash, the \
            extinguisher and the telephone. People come before paper: switch the white light on \
            without asking.\n\n\
            Fire, a bad smell or somebody lying on the floor: everyone out, shut the door, then \
            call. Do not go back for anything. The roll on the board says who was inside, so say \
            when you arrive and when you leave.\n\n\
            When the power or the fan goes off, cover the trays if that is quick, leave, and wait \
            until it is back. Nobody who is new works here alone.",
        traits: &[],
    },
];
