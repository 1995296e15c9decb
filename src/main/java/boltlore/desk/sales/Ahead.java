package boltlore.desk.sales;

import boltlore.book.orders.DraftDesk.Draft;
import boltlore.choosing.ChoiceState;
import boltlore.desk.frame.Answer;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Works out the page behind each answer while somebody reads the question, so that it is there when the answer is given. It
 * changes nothing: what is not ready in time is worked out then.
 */
final class Ahead {

    private static final int MOST_WAITING = 60;

    private final Choosings choosings;
    private final ThreadPoolExecutor executor = new ThreadPoolExecutor(
            1,
            1,
            1,
            TimeUnit.MINUTES,
            new NewestFirst(),
            work -> {
                Thread thread = new Thread(work, "working ahead");
                thread.setDaemon(true);
                return thread;
            },
            new ThreadPoolExecutor.DiscardPolicy());

    Ahead(Choosings choosings) {
        this.choosings = choosings;
    }

    /** What was asked for last is most likely to be answered next; the oldest of too many is let go. */
    private static final class NewestFirst extends LinkedBlockingDeque<Runnable> {

        @Override
        public boolean offer(Runnable work) {
            while (size() >= MOST_WAITING) {
                pollLast();
            }
            return offerFirst(work);
        }
    }

    void look(Draft draft, LocalDate today, Answer.Shown shown) {
        if (shown.page() instanceof Card card && card.question() != null) {
            List<String> answers = answers(card.question());
            OptionName option = new OptionName(card.question().option());
            for (String answer : answers) {
                executor.execute(() -> card(draft, today, option, answer));
            }
        }
    }

    private static List<String> answers(Card.@Nullable Question question) {
        return question == null
                ? List.of()
                : question.answers().stream().map(Card.Answer::value).toList();
    }

    private void card(Draft draft, LocalDate today, OptionName option, String value) {
        Order answered = new OrderBuilder(draft.order())
                .choices(draft.order().choices().with(option, value))
                .build();
        Draft after =
                new Draft(draft.standing(), answered, draft.customer(), draft.newest(), draft.earlier(), draft.last());
        choosings.with(answered, today, choosing -> {
            if (choosing.chooser().standing(answered.choices()) instanceof ChoiceState.Sound standing) {
                new CardMaker(after, choosing, standing).card("");
            }
            return true;
        });
    }
}
